# A room is one folder of the house, built as one static library. A room sees only the rooms it names in LOOKS_AT,
# so a forbidden include does not link; tests/architecture checks the includes themselves.

add_library(sumpwright_flags INTERFACE)
# Warnings are errors every day, but a warning of another compiler must not keep a person from a release.
set(strict $<$<CONFIG:Debug>:-Werror>)
target_compile_options(sumpwright_flags INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Wno-sign-conversion -Wshadow
                                                  ${strict} -fno-math-errno)
target_include_directories(sumpwright_flags INTERFACE ${PROJECT_SOURCE_DIR})
target_include_directories(sumpwright_flags SYSTEM INTERFACE ${Boost_INCLUDE_DIRS})
if(SUMPWRIGHT_SANITIZE)
  target_compile_options(sumpwright_flags INTERFACE -fsanitize=${SUMPWRIGHT_SANITIZE} -fno-omit-frame-pointer
                                                    -fno-sanitize-recover=all)
  target_link_options(sumpwright_flags INTERFACE -fsanitize=${SUMPWRIGHT_SANITIZE})
endif()
find_program(SUMPWRIGHT_MOLD mold)
if(SUMPWRIGHT_MOLD)
  target_link_options(sumpwright_flags INTERFACE -fuse-ld=mold)
endif()
if(CMAKE_BUILD_TYPE STREQUAL "Debug")
  target_compile_options(sumpwright_flags INTERFACE -Og)
else()
  target_compile_options(sumpwright_flags INTERFACE -Wno-restrict) # false alarms of GCC 12 on std::string at -O2
endif()

# sumpwright_room(core/units LOOKS_AT core/base [LIBRARIES Qt6::Widgets ...])
function(sumpwright_room room)
  cmake_parse_arguments(ROOM "" "" "LOOKS_AT;LIBRARIES" ${ARGN})
  string(REPLACE "/" "_" target ${room})
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/${room}/*.cpp ${PROJECT_SOURCE_DIR}/${room}/*.hpp)
  list(TRANSFORM ROOM_LOOKS_AT REPLACE "/" "_")
  set(has_code ${sources})
  list(FILTER has_code INCLUDE REGEX "\\.cpp$")
  if(has_code)
    add_library(${target} STATIC ${sources})
    if(room MATCHES "^ui/")
      set_target_properties(${target} PROPERTIES AUTOMOC ON)
      target_compile_definitions(${target} PRIVATE QT_NO_KEYWORDS QT_NO_CAST_FROM_ASCII
                                                   QT_DISABLE_DEPRECATED_BEFORE=0x060400)
    endif()
    target_link_libraries(${target} PUBLIC sumpwright_flags ${ROOM_LOOKS_AT} ${ROOM_LIBRARIES})
  else()
    add_library(${target} INTERFACE)
    target_link_libraries(${target} INTERFACE sumpwright_flags ${ROOM_LOOKS_AT} ${ROOM_LIBRARIES})
  endif()
endfunction()
