using System.CommandLine;
using System.Text;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery export</c>: the way out of this program.</summary>
internal sealed class ExportCommand
{
    private readonly CommonOptions options = new();

    private readonly Option<string> what = new("--what")
    {
        Description = "candles (CSV), blends (CSV) or all (JSON of every assessment). Default: candles.",
        DefaultValueFactory = _ => "candles",
    };

    private readonly Option<bool> commas = new("--decimal-comma")
    {
        Description = "Candles with semicolons between cells and decimal commas, as the spreadsheets of many countries want them.",
    };

    private readonly Option<string?> output = new("--out") { Description = "File to write; - or nothing: the terminal." };

    private ExportCommand() { }

    public static Command Build()
    {
        var export = new ExportCommand();
        export.what.AcceptOnlyFromAmong("candles", "blends", "all");
        var command = new Command(
            "export",
            "Candles or blends as CSV, or everything as JSON. 'import' reads candles back as they were, but for remarks in their files."
        );
        export.options.AddTo(command);
        command.Add(export.what);
        command.Add(export.commas);
        command.Add(export.output);
        command.SetAction(parse => Session.Guard(parse, session => export.Run(parse, session)));
        return command;
    }

    private int Run(ParseResult parse, Session session)
    {
        var problems = new Problems();
        if (Folder.Open(parse.GetValue(options.Path)!, parse.GetValue(options.Data), problems) is not { } folder)
        {
            return session.Report(problems.Found);
        }

        return parse.GetValue(what) == "candles" ? Candles(parse, session, folder) : Assessed(parse, session, folder);
    }

    // A table of candles has what is written, whatever comes of it.
    private int Candles(ParseResult parse, Session session, Folder folder)
    {
        List<Candle> candles = [.. folder.Declarations.Asked.OfType<Candle>()];
        var problems = new Problems();
        string table = CandleTable.Candles(candles, parse.GetValue(commas), problems);
        FolderReport report = FolderReport.Of(folder.Declarations, problems.Found);
        if (candles.Count == 0)
        {
            return session.Report(report.Bad.Count > 0 ? report.Bad : [DeclarationFolder.NoCandle(parse.GetValue(options.Path)!)]);
        }

        Write(parse, session, table);
        return session.Close(report, ExitCode.Fine);
    }

    private int Assessed(ParseResult parse, Session session, Folder folder)
    {
        IReadOnlyList<CatalogueEntry<Assessment>> entries = CatalogueRun.Assess(
            folder.Declarations.Catalogue,
            folder.Declarations.Asked,
            folder.Lawbook,
            parse.GetValue(options.AsOf),
            parse.GetValue(options.Place),
            a => a,
            done => session.Progress.Tell(done, folder.Declarations.Asked.Count)
        );
        FolderReport report = FolderReport.Of(folder.Declarations, [.. entries.SelectMany(e => e.Problems)]);
        if (entries.Count == 0)
        {
            return session.Report(report.Bad);
        }

        IEnumerable<Assessment> assessments = entries.SelectMany(e => e.Results);
        Write(parse, session, parse.GetValue(what) == "blends" ? CandleTable.Blends(assessments) : AssessmentJson.Write(assessments));
        return session.Close(report, ExitCode.Fine);
    }

    private void Write(ParseResult parse, Session session, string text)
    {
        if (parse.GetValue(output) is { } file)
        {
            session.WriteFile(file, Encoding.UTF8.GetBytes(text));
        }
        else
        {
            session.Raw.Write(text);
        }
    }
}
