# cmake -DIN=schema.sql -DOUT=schema_sql.h -DSPACE=landdrill::store -DNAME=schema_sql -P embed.cmake: a text file
# becomes a constant.
file(READ "${IN}" TEXT)
file(WRITE "${OUT}" "#pragma once\nnamespace ${SPACE} {\n"
     "inline constexpr const char* ${NAME} = R\"text(${TEXT})text\";\n}  // namespace ${SPACE}\n")
