@echo off
rem One night, its exit code turned into words that somebody sees.
rem   gambrel-night.cmd SHOP OUT
rem The file TO-DO.txt on everybody's desktop is there as long as something is to be done.
setlocal
set "NOTE=%PUBLIC%\Desktop\TO-DO Gambrel.txt"
set "SAID=%TEMP%\gambrel-said.txt"
call "%~dp0gambrel.cmd" run "%~1" --out "%~2" --quiet > "%SAID%" 2>&1
set CODE=%ERRORLEVEL%
set "WORDS=ALARM: the night was broken off with code %CODE%. Run it again."
if %CODE%==1 set "WORDS=Something waits for a person: see %~2\morning.pdf."
if %CODE%==2 set "WORDS=ALARM: nothing was published, the shop folder could not be used."
if %CODE%==3 set "WORDS=ALARM: nothing was published, another run still holds the output folder."
if %CODE%==4 set "WORDS=ALARM: the night failed half-way, the state of the night before stands."
if %CODE%==0 (
  if exist "%NOTE%" del "%NOTE%"
) else (
  > "%NOTE%" echo %DATE% %TIME%
  >> "%NOTE%" echo %WORDS%
  >> "%NOTE%" type "%SAID%"
)
del "%SAID%"
exit /b %CODE%
