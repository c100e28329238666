using System.CommandLine;
using Chandlery.Cli;
using Chandlery.Cli.Commands;

if (args is [PdfWorker.Argument])
{
    return PdfWorker.Work(Console.OpenStandardInput(), Console.OpenStandardOutput());
}

if (args is [MeasureCommand.Name, ..])
{
    MeasureCommand.BoundMemory();
}

try
{
    ParseResult parse = CommandTree.Build().Parse(args);
    int code = parse.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
    return parse.Errors.Count > 0 ? ExitCode.BadInput : code;
}
catch (Exception fault)
{
    Console.Error.WriteLine(LastResort.Say(fault));
    return ExitCode.Fault;
}
