using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Core.Schemas;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery reference</c>: the reference, made from commands, schemas and law data.</summary>
internal static class ReferenceCommand
{
    public static Command Build(RootCommand root, PaperList papers)
    {
        var law = new Option<bool>("--law")
        {
            Description = "Every row of the law with its clause and how it was checked, instead of commands and fields.",
        };
        var command = new Command(
            "reference",
            "Print the reference as Markdown: commands and fields, or with --law the rows of the law and their clauses."
        )
        {
            law,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    var problems = new Problems();
                    if (LawReader.Read(ShippedFiles.Data(null, problems), PaperList.Own.Ids, problems) is not { } lawbook)
                    {
                        return session.Report(problems.Found);
                    }

                    session.Raw.Write(parse.GetValue(law) ? Law(lawbook) : Fields(root, papers, lawbook));
                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }

    private static string Fields(RootCommand root, PaperList papers, Lawbook lawbook)
    {
        var page = new StringBuilder("# Reference\n\nMade by `chandlery reference`. Do not edit.\n\n## Commands\n\n```\n");
        page.Append(ManualCommand.Plain(root)).Append("```\n\n## What is declared\n");
        foreach ((string file, string text) in JsonSchemas.Declarations())
        {
            using JsonDocument schema = JsonDocument.Parse(text);
            page.Append(
                CultureInfo.InvariantCulture,
                $"\n### {file.Split('.')[0]}\n\n{schema.RootElement.GetProperty("title").GetString()}.\n\n| field | needed | what |\n|---|---|---|\n"
            );
            Properties(page, schema.RootElement, schema.RootElement, "");
        }

        page.Append(
            "\n## Papers\n\n| file name ends with | paper | one for each language | in a dossier | only where nothing stops the sale |\n|---|---|---|---|---|\n"
        );
        foreach (PaperKind paper in papers.All)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| `{paper.Id}` | {paper.Title} | {Yes(paper.IsPerLanguage)} | {Yes(paper.IsInDossier)} | {Yes(paper.NeedsSale)} |\n"
            );
        }

        page.Append("\n## Kinds of product\n\n| kind | what it is | state | used | IFRA category | needs |\n|---|---|---|---|---|---|\n");
        foreach (string[] row in KindsCommand.Rows(lawbook))
        {
            page.Append(CultureInfo.InvariantCulture, $"| `{row[0]}` | {string.Join(" | ", row[1..])} |\n");
        }

        page.Append("\n## Languages\n\n| code | name | statements | of them not sure | texts |\n|---|---|---|---|---|\n");
        foreach (Language language in lawbook.Languages)
        {
            int notSure = language.Official.Keys.Count(code => !language.OriginOf(code).IsVerified);
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {language.Code} | {language.Name} | {language.Official.Count} | {notSure} | {Cell(language.Origin.Checked)} |\n"
            );
        }

        page.Append("\n## Places of sale\n\n| code | place | edition | languages |\n|---|---|---|---|\n");
        foreach (Place place in lawbook.Places)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {place.Code} | {place.Name} | {place.EditionId} | {string.Join(place.EitherOf ? " or " : ", ", place.Languages)} |\n"
            );
        }

        page.Append("\n## Label stocks\n\n").Append(string.Join(", ", StockShelf.Names.Select(n => $"`{n}`"))).Append('\n');
        return page.ToString();
    }

    private static void Properties(StringBuilder page, JsonElement root, JsonElement schema, string above)
    {
        if (schema.TryGetProperty("$ref", out JsonElement reference))
        {
            schema = root.GetProperty("$defs").GetProperty(reference.GetString()!.Split('/')[^1]);
        }

        if (!schema.TryGetProperty("properties", out JsonElement properties))
        {
            return;
        }

        HashSet<string> required = schema.TryGetProperty("required", out JsonElement list)
            ? [.. list.EnumerateArray().Select(r => r.GetString()!)]
            : [];
        foreach (JsonProperty property in properties.EnumerateObject().Where(p => p.Name != "declares"))
        {
            string name = above + property.Name;
            page.Append(
                CultureInfo.InvariantCulture,
                $"| `{name}` | {(required.Contains(property.Name) ? "yes" : "")} | {Cell(Description(property.Value))} |\n"
            );
            Properties(page, root, property.Value, name + ".");
            if (property.Value.TryGetProperty("items", out JsonElement items))
            {
                Properties(page, root, items, name + "[].");
            }
        }
    }

    private static string Description(JsonElement schema)
    {
        string text = schema.TryGetProperty("description", out JsonElement description) ? description.GetString()! : "";
        return schema.TryGetProperty("enum", out JsonElement choices)
            ? $"{text} One of: {string.Join(", ", choices.EnumerateArray())}."
            : text;
    }

    private static void Liquids(StringBuilder page, Edition edition)
    {
        if (edition.Liquids is not { } liquids)
        {
            return;
        }

        page.Append("\n| of liquids alone | clause | confidence | stricter reading taken |\n|---|---|---|---|\n");
        foreach (ClassRule rule in liquids.Rules)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {rule.Group} | {Cell(rule.Clause)} | {Cell(rule.Confidence)} | {Cell(rule.Stricter)} |\n"
            );
        }

        IEnumerable<(string What, string Clause)> others =
        [
            ("methods of the flash point", liquids.Flash.MethodsClause.Text),
            .. liquids.Flash.Relief is { } relief ? new[] { ($"no category where {relief.Test} is negative", relief.Clause.Text) } : [],
            .. liquids.Vapour is { } vapour ? new[] { (vapour.Statement.Text, vapour.Clause.Text) } : [],
            .. liquids.Refill is { } refill ? new[] { ($"refilling in a shop, from {IsoDay.Plain(refill.From)}", refill.Clause.Text) } : [],
            .. liquids.NotComputed.Select(n => ($"not computed: {string.Join(", ", n.Hazards.Select(h => h.Code))}", n.Clause.Text)),
        ];
        foreach ((string what, string clause) in others)
        {
            page.Append(CultureInfo.InvariantCulture, $"| {Cell(what)} | {Cell(clause)} | | |\n");
        }
    }

    private static string Law(Lawbook lawbook)
    {
        var page = new StringBuilder(
            "# Rows of the law and their clauses\n\nMade by `chandlery reference --law`. Do not edit. The rows are data under `data/law`; *confidence* says how a row was checked.\n"
        );
        foreach (Edition edition in lawbook.Editions)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"\n## {edition.Id}\n\n{edition.Name}. Sources looked up {edition.LookedUp:yyyy-MM-dd}.\n\n"
            );
            Points(page, "From", edition.Sources);
            Points(page, "Leaves to others", edition.DoesNotCover);
            Points(page, "Papers that are refused", [.. edition.Refuses.Select(Words)]);
            page.Append("\n| hazard group | clause | holds from | confidence | stricter reading taken |\n|---|---|---|---|---|\n");
            foreach (ClassRule rule in edition.Rules)
            {
                string from = rule.InForce.From is { } day ? IsoDay.Plain(day) : "";
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {rule.Group} | {Cell(rule.Clause)} | {from} | {Cell(rule.Confidence)} | {Cell(rule.Stricter)} |\n"
                );
            }

            page.Append("\n| not computed | why | clause |\n|---|---|---|\n");
            foreach (NotComputed left in edition.NotComputed)
            {
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {string.Join(", ", left.Hazards.Select(h => h.Code))} | {Cell(left.Why)} | {Cell(left.Clause)} |\n"
                );
            }

            Liquids(page, edition);
            if (edition.Wordings.Count > 0)
            {
                page.Append("\n| worded twice | printed as in | not as in | why | clause | confidence |\n|---|---|---|---|---|---|\n");
            }

            foreach (WordingChoice choice in edition.Wordings)
            {
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {string.Join(", ", choice.Codes.Select(c => c.Text))} | {Cell(choice.Taken)} | {Cell(choice.NotTaken)} | {Cell(choice.Because)} | {Cell(choice.Clause)} | {Cell(choice.Confidence)} |\n"
                );
            }

            page.Append("\n| label | clause | from | status |\n|---|---|---|---|\n");
            foreach (LabelFormat format in edition.Formats.Formats)
            {
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {format.Id} | {Cell(format.Clause)} | {format.From:yyyy-MM-dd} | {format.Status.ToString().ToLowerInvariant()} |\n"
                );
            }

            page.Append("\n| safety data sheet: named or due from | percent | clause | confidence |\n|---|---|---|---|\n");
            foreach (ShareRow row in edition.SafetySheet.NamedFrom.Concat(edition.SafetySheet.OnRequestFrom))
            {
                string hazards = string.Join(", ", row.Hazards.Select(h => h.ClassCode).Distinct());
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {hazards} | {row.From.Value} | {Cell(row.Clause)} | {Cell(row.Confidence)} |\n"
                );
            }
        }

        SafetyReference.Write(page, lawbook.Safety);
        Substances(page, lawbook);
        return page.ToString();
    }

    private static void Substances(StringBuilder page, Lawbook lawbook)
    {
        page.Append(
            "\n## Substances of the trade with harmonised classes\n\nThe program holds the whole table; these are those that fragrance and candle makers meet. `chandlery substance` tells more of any of them.\n\n| substance | CAS | index | classes, newest | act | from |\n|---|---|---|---|---|---|\n"
        );
        foreach (KnownSubstance known in lawbook.Substances.Known)
        {
            var identity = new SubstanceIdentity(known.Names[0], CasNumber.Parse(known.Cas).Value, null);
            foreach (
                HarmonisedEntry entry in lawbook
                    .Substances.HistoriesOf(identity)
                    .Select(h => h.Versions[^1])
                    .Where(e => e.Stands && e.Member(identity) is not null)
            )
            {
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"| {Cell(known.Names[0])} | {known.Cas} | {entry.IndexNumber} | {Cell(string.Join("; ", entry.Classes.Select(c => c.Text)))} | {Cell(entry.Act.Title)} | {entry.From:yyyy-MM-dd} |\n"
                );
            }
        }
    }

    private static string Words(Refusal refusal) =>
        $"{string.Join(", ", refusal.Papers)}{(refusal.Hazards.Count == 0 ? "" : $" of {string.Join(", ", refusal.Hazards.Select(h => h.ClassCode).Distinct())}")}: {refusal.Because} ({refusal.Clause})";

    private static void Points(StringBuilder page, string head, IReadOnlyList<string> lines)
    {
        foreach (string line in lines)
        {
            page.Append(CultureInfo.InvariantCulture, $"* {head}: {line}\n");
        }
    }

    private static string Yes(bool holds) => holds ? "yes" : "";

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).ReplaceLineEndings(" ").Trim();
}
