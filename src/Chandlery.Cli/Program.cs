using System.CommandLine;
using Chandlery.Cli;

if (args is [PdfWorker.Argument])
{
    return PdfWorker.Work(Console.OpenStandardInput(), Console.OpenStandardOutput());
}

ParseResult parse = CommandTree.Build().Parse(args);
int code = parse.Invoke();
return parse.Errors.Count > 0 ? ExitCode.BadInput : code;
