@echo off
rem Runs the program on the Java that lies beside it.
"%~dp0..\runtime\bin\java" -Djava.awt.headless=true -jar "%~dp0..\gambrel.jar" %*
exit /b %ERRORLEVEL%
