using System.CommandLine;
using Chandlery.Cli;

ParseResult parse = CommandTree.Build().Parse(args);
int code = parse.Invoke();
return parse.Errors.Count > 0 ? ExitCode.BadInput : code;
