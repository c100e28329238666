using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using Chandlery.Core.Asked.Substances;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
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
        Option<bool> json = JsonOption.Of("substance");
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
                    if (ShippedLaw.Open(parse.GetValue(common.Data), problems) is not { } lawbook)
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
            session.Complain($"'{place}' is no place of sale that is known here. {lawbook.InsteadOfPlace(place)}");
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
        SubstanceHolders? holders = own is null ? null : SubstanceHolders.Of(own.Catalogue, lawbook, day, problems);
        Edition edition = lawbook.Edition(sold.EditionId);
        var question = new SubstanceQuestion(edition, day);
        LawInForce? law = day < edition.KnownFrom ? null : edition.On(day);
        SubstanceAnswer[] answers =
        [
            .. found.Value.SelectMany(identity => question.Ask(identity, [.. holders?.Holding(identity, law) ?? []])),
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
            session.Output.WriteLine(
                string.Join(Environment.NewLine, answers.Select(a => SubstanceText.Render(a, sold.Name, day, own is not null)))
            );
        }

        return own is null ? ExitCode.Fine : session.Close(FolderReport.Of(own, problems.Found), ExitCode.Fine);
    }
}
