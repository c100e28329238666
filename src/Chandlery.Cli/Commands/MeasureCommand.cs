using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Inspect;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery measure</c>: the legal dimensions of a label's PDF, from the PDF itself.</summary>
internal static class MeasureCommand
{
    public static Command Build()
    {
        var options = new CommonOptions();
        var pdf = new Argument<string>("pdf") { Description = "A label's PDF that this program made." };
        var command = new Command("measure", "Measure a label's PDF and say of each legal dimension and text whether it holds.");
        command.Add(pdf);
        options.AddTo(command);
        command.SetAction(parse =>
            Session.Run(parse, options, (session, assessments) => Measure(session, assessments, parse.GetValue(pdf)!))
        );
        return command;
    }

    private static int Measure(Session session, IReadOnlyList<Assessment> assessments, string file)
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
        catch (Exception error) when (error is not (IOException or UnauthorizedAccessException or OutOfMemoryException))
        {
            // The reader throws many kinds of exceptions on files that are no PDF.
            session.Complain($"{file}: this PDF cannot be read: {error.Message}");
            return ExitCode.BadInput;
        }

        HashSet<string> leftOff = [.. assessments[0].SmallPackageRelief.Select(r => r.Code)];
        IReadOnlyList<Inspection> strict = LabelInspector.Inspect(pages, assessments[0], new HashSet<string>());
        IReadOnlyList<Inspection> checks = strict.All(c => c.Holds) ? strict : LabelInspector.Inspect(pages, assessments[0], leftOff);
        var table = new TextTable("", "What", "Measured", "Required", "Clause");
        foreach (Inspection check in checks)
        {
            table.Add(check.Holds ? "holds" : "FAILS", check.What, check.Measured, check.Required, check.Clause);
        }

        session.Output.Write(table.Render(AssessCommand.Width));
        return checks.All(c => c.Holds) ? ExitCode.Fine : ExitCode.StopsSale;
    }
}
