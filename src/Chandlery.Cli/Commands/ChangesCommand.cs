using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery changes</c>: what would change between two states of a catalogue.</summary>
internal static class ChangesCommand
{
    public static Command Build()
    {
        var options = new CommonOptions();
        var to = new Option<string?>("--to")
        {
            Description = "A folder with the later state of the declarations. Default: the same folder.",
        };
        var with = new Option<string[]>("--with")
        {
            Description =
                "A declaration that takes the place of the one with the same name in the later state, such as a new revision of an oil.",
            AllowMultipleArgumentsPerToken = true,
        };
        var toAsOf = new Option<DateOnly?>("--to-as-of")
        {
            Description = "The day whose law holds in the later state. Default: the same day.",
            CustomParser = CommonOptions.Day,
        };
        Option<bool> json = JsonOption.Of("changes");
        var command = new Command(
            "changes",
            "What would change on which candle between two states: a new oil revision (--with), another folder (--to), another day's law (--to-as-of). Says why."
        );
        options.AddTo(command);
        command.Add(to);
        command.Add(with);
        command.Add(toAsOf);
        command.Add(json);
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                    Run(
                        session,
                        parse,
                        options,
                        parse.GetValue(to),
                        parse.GetValue(with) ?? [],
                        parse.GetValue(toAsOf),
                        parse.GetValue(json)
                    )
            )
        );
        return command;
    }

    private static int Run(
        Session session,
        ParseResult parse,
        CommonOptions options,
        string? to,
        string[] with,
        DateOnly? toAsOf,
        bool json
    )
    {
        var problems = new Problems();
        string path = parse.GetValue(options.Path)!;
        Folder? before = Folder.Open(path, parse.GetValue(options.Data), problems);
        Folder? after = to is null ? before : Folder.Open(to, parse.GetValue(options.Data), problems);
        if (before is null || after is null)
        {
            return session.Report(problems.Found);
        }

        Catalogue? later = Replaced(after, with, problems);
        if (later is null)
        {
            return session.Report(problems.Found);
        }

        DateOnly asOf = parse.GetValue(options.AsOf);
        string? place = parse.GetValue(options.Place);
        if (!session.Knows(before.Lawbook, place))
        {
            return ExitCode.BadInput;
        }

        IReadOnlyList<CatalogueEntry<CandleState>> old = CatalogueRun.Assess(
            before.Declarations.Catalogue,
            before.Declarations.Asked,
            before.Lawbook,
            asOf,
            place,
            CandleState.Of
        );
        IReadOnlyList<CatalogueEntry<CandleState>> now = CatalogueRun.Assess(
            later,
            Asked(later, before.Declarations.AskedFile is null ? after.Declarations : before.Declarations),
            after.Lawbook,
            toAsOf ?? asOf,
            place,
            CandleState.Of
        );
        if (old.Concat(now).All(e => e.Results.Count == 0))
        {
            return session.Report(FolderReport.Of(before.Declarations, [.. old.Concat(now).SelectMany(e => e.Problems)]).Bad);
        }

        IReadOnlyList<CandleChange> changes = StateComparison.Compare(old, now);
        if (json)
        {
            session.Output.WriteLine(JsonSerializer.Serialize([.. changes], ComparedJson.Default.CandleChangeArray));
        }
        else
        {
            Show(session, changes);
        }

        List<Problem> wrong = [.. old.SelectMany(e => e.Problems), .. to is null ? now.SelectMany(e => e.Problems) : []];
        int code = session.Close(FolderReport.Of(before.Declarations, wrong), ExitCode.Fine);
        return to is null ? code : session.Close(FolderReport.Of(after.Declarations, [.. now.SelectMany(e => e.Problems)]), code);
    }

    // What was asked for, as the later state has it.
    private static List<IDeclaration> Asked(Catalogue later, DeclarationFolder folder)
    {
        HashSet<(Type, string)> asked = [.. folder.Asked.Select(d => (d.GetType(), d.Id))];
        return [.. later.All.Where(d => asked.Contains((d.GetType(), d.Id)))];
    }

    private static void Show(Session session, IReadOnlyList<CandleChange> changes)
    {
        session.Output.WriteLine(
            changes.Count == 0 ? "Nothing changes." : $"{changes.Count} candle{(changes.Count == 1 ? " changes" : "s change")}."
        );
        foreach (CandleChange candle in changes)
        {
            session.Output.WriteLine();
            session.Output.WriteLine($"{candle.Id} ({candle.Edition}){(candle.Remark.Length > 0 ? ": " + candle.Remark : "")}");
            foreach (StateChange change in candle.Changes)
            {
                session.Output.WriteLine($"  {(change.Begins ? "+" : "-")} {change.Subject}: {change.Text}");
                session.Output.WriteLine($"      {(change.Begins ? "now" : "before")}: {change.Why}");
            }
        }
    }

    // A replacement keeps its file's name, by which others refer to it.
    private static Catalogue? Replaced(Folder folder, string[] files, Problems problems)
    {
        List<IDeclaration> all = [.. folder.Declarations.Catalogue.All];
        List<WrongFile> wrong = [.. folder.Declarations.Catalogue.Wrong];
        var reader = new DeclarationReader(folder.Lawbook.Vocabulary);
        foreach (string file in files)
        {
            string id = Path.GetFileNameWithoutExtension(file);
            IDeclaration? declaration = TextFile.Read(file, file, problems) is { } text ? reader.Read(text, file, id, problems) : null;
            if (declaration is null)
            {
                continue;
            }

            string kind = declaration.GetType().Name.ToLowerInvariant();
            if (wrong.RemoveAll(w => w.Id == id && (w.Kind ?? kind) == kind) > 0)
            {
                all.RemoveAll(d => d.GetType() == declaration.GetType() && d.Id == id);
                all.Add(declaration);
                continue;
            }

            int at = all.FindIndex(d => d.GetType() == declaration.GetType() && d.Id == id);
            if (at < 0)
            {
                problems.Add(
                    new TextPlace(file, 0, 0),
                    $"The folder declares no {kind} named '{id}' that it could replace.",
                    "Give the file the name of the declaration that it replaces."
                );
                continue;
            }

            all[at] = declaration;
        }

        return problems.None ? new Catalogue(all, problems, wrong) : null;
    }
}
