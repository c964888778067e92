# cmake -DIN=schema.sql -DOUT=schema_sql.h -DNAME=schema_sql -P embed.cmake: a text file becomes a constant.
file(READ "${IN}" TEXT)
file(WRITE "${OUT}" "#pragma once\nnamespace landdrill::store {\n"
     "inline constexpr const char* ${NAME} = R\"sql(${TEXT})sql\";\n}  // namespace landdrill::store\n")
