@echo off
rem Starts Stillturning with what suits the command; see the file without .cmd beside this one.
setlocal
set "FLAGS=-XX:+UseSerialGC -XX:TieredStopAtLevel=1"
for %%w in (%*) do (
  for %%l in (desktop run-up --pairs --latent --every-phase --guesses --ranges --propose) do (
    if "%%~w"=="%%l" set "FLAGS="
  )
)
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
rem a release brings a Java of its own
if exist "%~dp0runtime\bin\java.exe" set "JAVA=%~dp0runtime\bin\java"
"%JAVA%" %FLAGS% -jar "%~dp0stillturning.jar" %*
