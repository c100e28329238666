using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Declared;
using Chandlery.Core.Notified;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery ufi</c>: makes and checks unique formula identifiers.</summary>
internal static class UfiCommand
{
    public static Command Build()
    {
        var country = new Argument<string>("country")
        {
            Description = "Country code of the VAT number (EL for Greece), or KEY for a company key.",
        };
        var vat = new Argument<string>("vat") { Description = "VAT number without the country's letters." };
        var formulation = new Argument<long>("formulation")
        {
            Description = $"Formulation number, 0 to {FormulationNumber.Largest}; never one that another composition had.",
            CustomParser = Numbers.Long("The formulation number", long.MinValue, long.MaxValue),
        };
        Option<bool> madeJson = JsonOption.Of("ufi make");
        var make = new Command("make", "Make a UFI from a VAT number and a formulation number.") { country, vat, formulation, madeJson };
        make.SetAction(parse =>
            Say(
                parse,
                madeJson,
                Ufi.Make(parse.GetValue(country)!, parse.GetValue(vat)!, parse.GetValue(formulation)),
                made => made,
                made => UfiAnswer.Of(made, Ufi.Parse(made).Value)
            )
        );
        var code = new Argument<string>("code") { Description = "The sixteen signs, with or without hyphens." };
        Option<bool> checkedJson = JsonOption.Of("ufi check");
        var check = new Command("check", "Check a UFI and say what it holds.") { code, checkedJson };
        check.SetAction(parse =>
            Say(
                parse,
                checkedJson,
                Ufi.Parse(parse.GetValue(code)!),
                content => $"valid: country {content.Country}, VAT value {content.VatValue}, formulation {content.FormulationNumber}",
                content => UfiAnswer.Of(parse.GetValue(code)!, content)
            )
        );
        return new Command("ufi", "Make or check a unique formula identifier (UFI).") { make, check };
    }

    private static int Say<T>(ParseResult parse, Option<bool> json, Parsed<T> answer, Func<T, string> words, Func<T, UfiAnswer> forPrograms)
        where T : notnull =>
        Session.Guard(
            parse,
            session =>
            {
                if (!answer.Success)
                {
                    session.Complain(answer.Reason);
                    return ExitCode.BadInput;
                }

                session.Output.WriteLine(
                    parse.GetValue(json)
                        ? JsonSerializer.Serialize(forPrograms(answer.Value), AnswerJson.Plain.UfiAnswer)
                        : words(answer.Value)
                );
                return ExitCode.Fine;
            }
        );
}
