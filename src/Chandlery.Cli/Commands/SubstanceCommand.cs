using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using Chandlery.Core.Asked.Substances;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery substance</c>: what the law says of a substance, and where the maker has it.</summary>
internal static class SubstanceCommand
{
    private static readonly SubstanceJson Json = new(
        new JsonSerializerOptions(SubstanceJson.Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }
    );

    public static Command Build()
    {
        var common = new CommonOptions();
        var query = new Argument<string>("substance") { Description = "A CAS, EC or index number, or a name." };
        var folder = new Option<string?>("--in")
        {
            Description = "A maker's folder: say also which of its oils, waxes, extras and candles hold it.",
        };
        var place = new Option<string>("--place")
        {
            Description = "The place of sale whose law is asked (country code).",
            DefaultValueFactory = _ => "IE",
        };
        var json = new Option<bool>("--json") { Description = "Print JSON: an object, or an array where several entries answer." };
        var command = new Command(
            "substance",
            "Say what the law says of a substance: its harmonised classes, since when, what they were before and what is to come."
        )
        {
            query,
            place,
            common.AsOf,
            common.Data,
            folder,
            json,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    var problems = new Problems();
                    string? data = parse.GetValue(common.Data);
                    if (ShippedLaw.Open(ShippedFiles.Data(data, problems), data, problems) is not { } lawbook || !problems.None)
                    {
                        return session.Report(problems.Found);
                    }

                    return Answer(
                        session,
                        lawbook,
                        parse.GetValue(query)!,
                        parse.GetValue(place)!,
                        parse.GetValue(common.AsOf),
                        parse.GetValue(folder),
                        parse.GetValue(json)
                    );
                }
            )
        );
        return command;
    }

    private static int Answer(Session session, Lawbook lawbook, string query, string place, DateOnly day, string? folder, bool json)
    {
        if (lawbook.FindPlace(place) is not { } sold)
        {
            string near = Suggestion.Nearest(place, lawbook.Places.Select(p => p.Code)) is { } code ? $" Did you mean '{code}'?" : "";
            session.Complain($"'{place}' is no place of sale that is known here.{near}");
            return ExitCode.BadInput;
        }

        Parsed<IReadOnlyList<SubstanceIdentity>> found = SubstanceSearch.Find(lawbook.Substances, query);
        if (!found.Success)
        {
            session.Complain(found.Reason!);
            return ExitCode.BadInput;
        }

        var problems = new Problems();
        DeclarationFolder? own = folder is null ? null : DeclarationFolder.Open(folder, lawbook.Vocabulary);
        var question = new SubstanceQuestion(lawbook.Substances, lawbook.Edition(sold.EditionId).Harmonised, day);
        SubstanceAnswer[] answers =
        [
            .. found.Value.SelectMany(identity =>
                question.Ask(identity, own is null ? [] : Holders(lawbook, own, identity, day, problems))
            ),
        ];
        if (json)
        {
            session.Output.WriteLine(
                answers.Length == 1
                    ? JsonSerializer.Serialize(answers[0], Json.SubstanceAnswer)
                    : JsonSerializer.Serialize(answers, Json.SubstanceAnswerArray)
            );
        }
        else
        {
            session.Output.WriteLine(string.Join(Environment.NewLine, answers.Select(a => SubstanceText.Render(a, day, own is not null))));
        }

        return own is null ? ExitCode.Fine : session.Close(FolderReport.Of(own, problems.Found), ExitCode.Fine);
    }

    private static List<HolderAnswer> Holders(
        Lawbook lawbook,
        DeclarationFolder own,
        SubstanceIdentity identity,
        DateOnly day,
        Problems problems
    )
    {
        var holders = new List<HolderAnswer>();
        foreach (Oil oil in own.Catalogue.OfKind<Oil>())
        {
            Add("oil", oil.Id, oil.Name, oil.Ingredients);
        }

        foreach (Wax wax in own.Catalogue.OfKind<Wax>())
        {
            Add("wax", wax.Id, wax.Name, wax.Ingredients);
        }

        foreach (Extra extra in own.Catalogue.OfKind<Extra>())
        {
            Add("extra", extra.Id, extra.Name, extra.Ingredients);
        }

        var assessor = new Assessor(lawbook, own.Catalogue, day);
        foreach (Assessment a in own.Catalogue.OfKind<Candle>().SelectMany(c => assessor.Assess(c, null, problems)).DistinctBy(a => a.Id))
        {
            holders.AddRange(
                a.Composition.Ingredients.Where(i => IsSame(i.Identity, identity))
                    .Select(i => new HolderAnswer("candle", a.Id, a.Candle.Name, $"<= {Figures.Plain(i.WholeHigh.Value)} %"))
            );
        }

        return holders;

        void Add(string kind, string id, string name, IReadOnlyList<Ingredient> table) =>
            holders.AddRange(
                table
                    .Concat(table.SelectMany(i => i.Constituents))
                    .Where(i => IsSame(i.Identity, identity))
                    .Select(i => new HolderAnswer(kind, id, name, i.Share.Printed))
            );
    }

    private static bool IsSame(SubstanceIdentity a, SubstanceIdentity b) =>
        (a.Cas is not null && a.Cas == b.Cas) || (a.Ec is not null && a.Ec == b.Ec);
}
