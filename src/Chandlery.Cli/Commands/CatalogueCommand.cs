using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery catalogue</c>: all candles of a folder in a table.</summary>
internal static class CatalogueCommand
{
    public static Command Build()
    {
        var options = new CommonOptions();
        Option<bool> json = JsonOption.Of("catalogue");
        var command = new Command(
            "catalogue",
            "Assess every candle and batch of a folder at once and print a table. What is wrong with one does not hide the others."
        );
        options.AddTo(command);
        command.Add(json);
        command.SetAction(parse => Session.Guard(parse, session => Run(session, parse, options, parse.GetValue(json))));
        return command;
    }

    private static int Run(Session session, ParseResult parse, CommonOptions options, bool json)
    {
        var problems = new Problems();
        string path = parse.GetValue(options.Path)!;
        if (Folder.OpenLaw(path, parse.GetValue(options.Data), problems) is not { } lawbook)
        {
            return session.Report(problems.Found);
        }

        DateOnly asOf = parse.GetValue(options.AsOf);
        string? place = parse.GetValue(options.Place);
        if (!session.Knows(lawbook, place))
        {
            return ExitCode.BadInput;
        }

        return json
            ? Print(
                session,
                FolderRun.Assess(path, lawbook, asOf, place, CatalogueRow.Of, (done, count) => session.Progress.Tell(done, count)),
                r => r.StopsSale,
                rows => session.Output.WriteLine(JsonSerializer.Serialize([.. rows], ComparedJson.Default.CatalogueRowArray))
            )
            : Print(
                session,
                FolderRun.Assess(path, lawbook, asOf, place, new CatalogueLines().Of, (done, count) => session.Progress.Tell(done, count)),
                line => line.StopsSale,
                lines => CatalogueLines.Table(lines).Write(session.Output, AssessCommand.Width)
            );
    }

    private static int Print<T>(Session session, FolderEntries<T> run, Func<T, bool> stopsSale, Action<IEnumerable<T>> print)
    {
        session.Progress.Clear();
        print(run.Entries.SelectMany(e => e.Results));
        bool stops = run.Entries.Any(e => e.Results.Any(stopsSale));
        return session.Close(run.Report, stops ? ExitCode.StopsSale : ExitCode.Fine);
    }
}
