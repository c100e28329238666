using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Assessed;
using Chandlery.Paper.Proofs;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery measure</c>: the legal dimensions of a label's PDF, from the PDF itself.</summary>
internal static class MeasureCommand
{
    /// <summary>The command's name.</summary>
    public const string Name = "measure";

    private const ulong MostMemoryBytes = 800_000_000;

    /// <summary>
    /// Bounds this process's memory, for the PDF may be anybody's and a small one can unpack to more than there is. It cannot be
    /// undone, so the program calls it when it starts to measure and does nothing else.
    /// </summary>
    public static void BoundMemory()
    {
        AppContext.SetData("GCHeapHardLimit", MostMemoryBytes);
        GC.RefreshMemoryLimit();
    }

    public static Command Build()
    {
        var options = new CommonOptions();
        var pdf = new Argument<string>("pdf") { Description = "A label's PDF that this program made." };
        var command = new Command(Name, "Measure a label's PDF and say of each legal dimension and text whether it holds.");
        command.Add(pdf);
        options.AddTo(command);
        Option<bool> json = JsonOption.Of(Name);
        command.Add(json);
        command.SetAction(parse =>
            Session.Run(parse, options, (session, assessments) => Measure(session, assessments, parse.GetValue(pdf)!, parse.GetValue(json)))
        );
        return command;
    }

    private static int Measure(Session session, IReadOnlyList<Assessment> assessments, string file, bool json)
    {
        if (assessments.Count != 1)
        {
            session.Complain("Name the one candle that the label belongs to, and with --place its place of sale if it has several laws.");
            return ExitCode.BadInput;
        }

        IReadOnlyList<MeasuredPage> pages;
        try
        {
            pages = MeasuredPage.ReadAll(File.ReadAllBytes(file));
        }
        catch (Exception error) when (error is not (IOException or UnauthorizedAccessException))
        {
            // The reader throws many kinds of exceptions on files that are no PDF.
            string why = error is OutOfMemoryException ? "it needs more memory than a label's PDF should" : error.Message;
            session.Complain($"{file}: this PDF cannot be read: {why}");
            return ExitCode.BadInput;
        }

        HashSet<string> leftOff = [.. assessments[0].SmallPackageRelief.Select(r => r.Code)];
        IReadOnlyList<Inspection> strict = LabelInspector.Inspect(pages, assessments[0], new HashSet<string>());
        IReadOnlyList<Inspection> checks = strict.All(c => c.Holds) ? strict : LabelInspector.Inspect(pages, assessments[0], leftOff);
        var table = new TextTable("", "What", "Measured", "Required", "Clause");
        foreach (Inspection check in checks)
        {
            table.Add(!check.Holds, check.Holds ? "holds" : "FAILS", check.What, check.Measured, check.Required, check.Clause);
        }

        if (json)
        {
            session.Output.WriteLine(JsonSerializer.Serialize([.. checks], AnswerJson.Plain.InspectionArray));
        }
        else
        {
            session.Output.Write(table.Render(AssessCommand.Width, Ink.Output));
        }

        return checks.All(c => c.Holds) ? ExitCode.Fine : ExitCode.StopsSale;
    }
}
