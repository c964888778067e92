#!/usr/bin/env python3
"""Writes what list_fuzz starts from: list_seeds.py FOLDER. The first byte says which part reads it (list_fuzz.cpp)."""
import pathlib
import sys

folder = pathlib.Path(sys.argv[1])
folder.mkdir(parents=True, exist_ok=True)

marks = ["date,meet,routine,element,judge,mark\n2026-05-09,Tarn Open,Reed Song,2,1,7.25\n2026-05-09,Tarn Open,Reed Song,2,J2,-\n",
         "\ufeffNote;Richter;Element;Datum;Wettkampf;Kür;Event;base mark\r\n7,25;J2;\"1\";2026-05-09;\"Tarn \"\"Open\"\"\";Low Water;solo-free;yes\r\n",
         "date\troutine\telement\tjudge\tmark\n2026-02-30\tReed Song\t1\t1\t7\n2026\tReed Song\t1\tfirst\tgood\n",
         "date,routine,element,judge,mark\n2026-05-09,Reed Song,1,1,7,25\n2026-05-09,\"Reed Song,1,1,7\n"]
practice = ["trainee;session;date;meet;routine;element;mark;late\nRobin;2026-05-10;2026-05-09;Tarn Open;Reed Song;2;7,25;\n",
            "date,routine,element,mark\n2026-05-09,Reed Song,choreography,-\n2026-05-09,Reed Song,1,7\n",
            "trainee,session,date,routine,event,element,mark\n'=Robin,2026-05-10T18:30:00Z,2026-05-09,Reed Song,duet-free,2,7.25\n",
            "trainee,session,date,routine,element,mark\nRobin,yesterday,2026-05-09,Reed Song,2,7.25\n,,2026-13-09,Reed Song,2,seven\n"]
values = ["code,value\nSP-360,0.9\nTH-1,0.7\n", "Code;Wert\r\nSP-360;0,9\r\nsp-720;1,3\r\n", "SP-360\t0,9\nTH-2\t1,1",
          "code,title,difficulty\nTH-2,\"Thrust, twisted\",1.1\nTH-3,,0.8\n", "0.9,SP-360\nnone,TH-1\n"]
for number, text in enumerate(marks + practice + values):
    (folder / f"rows-{number}").write_bytes(b"\0" + text.encode())
for number, text in enumerate(marks):
    (folder / f"marks-{number}").write_bytes(b"\1" + text.encode())
for number, text in enumerate(practice):
    (folder / f"practice-{number}").write_bytes(b"\2" + text.encode())
for number, text in enumerate(values):
    (folder / f"fill-{number}").write_bytes(b"\3" + text.encode())
    (folder / f"new-{number}").write_bytes(b"\4" + text.encode())
