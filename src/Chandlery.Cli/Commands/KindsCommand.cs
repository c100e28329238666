using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
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
        Option<bool> json = JsonOption.Of("kinds");
        var command = new Command("kinds", "The kinds of product: what each asks for, and which papers are not made of it.") { data, json };
        command.SetAction(parse => Session.Guard(parse, session => Run(session, parse.GetValue(data), parse.GetValue(json))));
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

    private static int Run(Session session, string? data, bool json)
    {
        var problems = new Problems();
        if (ShippedLaw.Open(data, problems) is not { } lawbook)
        {
            return session.Report(problems.Found);
        }

        if (json)
        {
            KindAnswer[] answers = [.. lawbook.Kinds.Select(Answer)];
            session.Output.WriteLine(JsonSerializer.Serialize(answers, AnswerJson.Plain.KindAnswerArray));
            return ExitCode.Fine;
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

    private static KindAnswer Answer(ProductKind kind) =>
        new(kind.Id, kind.Name, Word(kind.State), Each(kind.UsedIn), kind.IfraCategory, Each(kind.Needs), Each(kind.MayHave))
        {
            WithoutPapers = kind.WithoutPapers,
            Source = kind.Source,
        };

    private static string Words<T>(IEnumerable<T> values)
        where T : struct, Enum => string.Join(", ", Each(values));

    private static IReadOnlyList<string> Each<T>(IEnumerable<T> values)
        where T : struct, Enum => [.. values.Select(Word)];

    private static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
}
