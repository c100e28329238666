using System.CommandLine;
using Chandlery.Cli;
using Chandlery.Cli.Commands;

if (args is [PdfWorker.Argument or PdfWorker.WithPictures])
{
    return PdfWorker.Work(args[0], Console.OpenStandardInput(), Console.OpenStandardOutput());
}

if (args is [MeasureCommand.Name, ..])
{
    MeasureCommand.BoundMemory();
}

try
{
    ParseResult parse = CommandTree.Build().Parse(args);
    if (parse.Action is not PlainHelp)
    {
        PutOffCollecting();
    }

    parse.InvocationConfiguration.EnableDefaultExceptionHandler = false;
    return UsageErrors.RunOrSay(parse);
}
catch (Exception fault)
{
    Session.Told(Console.Error).WriteLine(LastResort.Say(fault));
    return ExitCode.Fault;
}

// One label is made within this room, and then nothing is collected on the way; beyond it collecting goes on as usual.
static void PutOffCollecting()
{
    const long OneLabel = 32 * 1024 * 1024;
    try
    {
        GC.TryStartNoGCRegion(OneLabel);
    }
    catch (ArgumentOutOfRangeException)
    {
        // The machine gives the program less room than that: it collects from the start.
    }
}
