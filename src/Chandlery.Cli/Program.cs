using System.CommandLine;
using Chandlery.Cli;

if (args is [PdfWorker.Argument])
{
    return PdfWorker.Work(Console.OpenStandardInput(), Console.OpenStandardOutput());
}

ParseResult parse = CommandTree.Build().Parse(args);
try
{
    int code = parse.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
    return parse.Errors.Count > 0 ? ExitCode.BadInput : code;
}
catch (Exception fault)
{
    Console.Error.WriteLine(LastResort.Say(fault));
    return ExitCode.Fault;
}
