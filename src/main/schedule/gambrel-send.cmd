@echo off
rem The day's sending, its exit code turned into words that somebody sees.
rem   gambrel-send.cmd SHOP OUT
rem The file TO-SEND on everybody's desktop is there as long as something is to be done.
setlocal
set "NOTE=%PUBLIC%\Desktop\TO-SEND Gambrel.txt"
set "SAID=%TEMP%\gambrel-send-said.txt"
call "%~dp0gambrel.cmd" send "%~1" --out "%~2" --quiet > "%SAID%" 2>&1
set CODE=%ERRORLEVEL%
set "WORDS=ALARM: the sending was broken off with code %CODE%."
if %CODE%==1 set "WORDS=Statements wait for a person."
if %CODE%==2 set "WORDS=ALARM: nothing was sent, the shop folder or its mail settings could not be used."
if %CODE%==3 set "WORDS=Nothing was sent, another run holds the output folder."
if %CODE%==4 set "WORDS=ALARM: the sending stopped; the next one goes on."
if %CODE%==0 (
  if exist "%NOTE%" del "%NOTE%"
) else (
  > "%NOTE%" echo %DATE% %TIME%
  >> "%NOTE%" echo %WORDS%
  >> "%NOTE%" type "%SAID%"
)
del "%SAID%"
exit /b %CODE%
