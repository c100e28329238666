using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery statements</c>: the law's statements in a language, with where each text comes from.</summary>
internal static class StatementsCommand
{
    private static readonly StatementsJson Json = new(
        new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            WriteIndented = true,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        }
    );

    public static Command Build()
    {
        var code = new Argument<string>("language") { Description = "The language's code, such as de." };
        Option<bool> json = JsonOption.Of("statements");
        Option<string?> data = new CommonOptions().Data;
        var command = new Command(
            "statements",
            "The law's statements in a language, word for word, each with its source and whether its text is sure."
        )
        {
            code,
            json,
            data,
        };
        command.SetAction(parse =>
            Session.Guard(parse, session => Run(session, parse.GetValue(code)!, parse.GetValue(data), parse.GetValue(json)))
        );
        return command;
    }

    private static int Run(Session session, string code, string? data, bool json)
    {
        var problems = new Problems();
        if (ShippedLaw.Open(data, problems) is not { } lawbook)
        {
            return session.Report(problems.Found);
        }

        if (lawbook.WithoutTexts.ContainsKey(code) || lawbook.FindLanguage(code) is not { } language)
        {
            session.Complain(WhyNot(lawbook, code));
            return ExitCode.BadInput;
        }

        session.Output.WriteLine(json ? JsonSerializer.Serialize(Texts(language), Json.DictionaryStringStatementLine) : Table(language));
        return ExitCode.Fine;
    }

    private static string WhyNot(Lawbook lawbook, string code)
    {
        if (lawbook.WithoutTexts.TryGetValue(code, out string? because))
        {
            return $"There are no texts in the language '{code}': {because}.";
        }

        string near = Suggestion.Nearest(code, lawbook.Languages.Codes) is { } guess ? $" Did you mean '{guess}'?" : "";
        return $"There are no texts in the language '{code}'.{near} Languages: {string.Join(", ", lawbook.Languages.Codes)}.";
    }

    private static Dictionary<string, StatementLine> Texts(Language language) =>
        CodesOf(language).ToDictionary(code => code.Text, code => LineOf(language, code));

    private static string Table(Language language)
    {
        var table = new TextTable("code", "sure", "text");
        foreach (StatementCode code in CodesOf(language))
        {
            StatementLine line = LineOf(language, code);
            table.Add(code, line.Verified ? "yes" : "no", line.Text);
        }

        var lines = new List<string> { $"{language.Name}: {language.Origin.Source}; {language.Origin.Checked}.", "" };
        lines.Add(table.Render(AssessCommand.Width, Ink.Output));
        foreach (IGrouping<TextOrigin, StatementCode> codes in CodesOf(language).GroupBy(language.OriginOf))
        {
            if (codes.Key != language.Origin)
            {
                lines.AddRange(
                    TextTable.Wrap(
                        $"{string.Join(", ", codes.Select(c => c.Text))}: {codes.Key.Source}; {codes.Key.Checked}.",
                        AssessCommand.Width
                    )
                );
            }
        }

        return string.Join(Environment.NewLine, lines);
    }

    private static IEnumerable<StatementCode> CodesOf(Language language) =>
        language.Official.Keys.OrderBy(code => code.Text, StringComparer.Ordinal);

    private static StatementLine LineOf(Language language, StatementCode code)
    {
        TextOrigin origin = language.OriginOf(code);
        return new StatementLine(language.Official[code], language.Statement(code)!, origin.Source, origin.Checked, origin.IsVerified);
    }
}
