using System.CommandLine;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery kinds</c>: the kinds of product, what each asks for and which papers are not made of it.</summary>
internal static class KindsCommand
{
    public static Command Build()
    {
        Option<string?> data = new CommonOptions().Data;
        var command = new Command("kinds", "The kinds of product: what each asks for, and which papers are not made of it.") { data };
        command.SetAction(parse => Session.Guard(parse, session => Run(session, parse.GetValue(data))));
        return command;
    }

    /// <summary>A row for each kind: name, state, place of use, IFRA category, what it needs and may have.</summary>
    public static IEnumerable<string[]> Rows(Lawbook lawbook) =>
        lawbook.Kinds.Select(k =>
            new[]
            {
                k.Id,
                k.Name,
                Words([k.State]),
                Words(k.UsedIn),
                k.IfraCategory ?? "by the certificate",
                Words(k.Needs) + (k.MayHave.Count > 0 ? $"; may have {Words(k.MayHave)}" : ""),
            }
        );

    private static int Run(Session session, string? data)
    {
        var problems = new Problems();
        if (ShippedLaw.Open(data, problems) is not { } lawbook)
        {
            return session.Report(problems.Found);
        }

        var table = new TextTable("kind", "what it is", "state", "used", "IFRA category", "needs");
        foreach (string[] row in Rows(lawbook))
        {
            table.Add(row);
        }

        table.Write(session.Output, AssessCommand.Width);
        foreach (ProductKind kind in lawbook.Kinds)
        {
            session.Output.WriteLine();
            session.WriteWrapped(
                $"{kind.Id}: {(kind.WithoutPapers.Count == 0 ? "all papers" : $"all papers but {string.Join(", ", kind.WithoutPapers)}")}"
            );
            session.WriteWrapped($"  signs: {kind.Source}.");
        }

        return ExitCode.Fine;
    }

    private static string Words<T>(IEnumerable<T> values)
        where T : struct, Enum => string.Join(", ", values.Select(v => v.ToString().ToLowerInvariant()));
}
