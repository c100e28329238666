using System.CommandLine;
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
        var make = new Command("make", "Make a UFI from a VAT number and a formulation number.") { country, vat, formulation };
        make.SetAction(parse =>
            Say(parse, Ufi.Make(parse.GetValue(country)!, parse.GetValue(vat)!, parse.GetValue(formulation)), made => made)
        );
        var code = new Argument<string>("code") { Description = "The sixteen signs, with or without hyphens." };
        var check = new Command("check", "Check a UFI and say what it holds.") { code };
        check.SetAction(parse =>
            Say(
                parse,
                Ufi.Parse(parse.GetValue(code)!),
                content => $"valid: country {content.Country}, VAT value {content.VatValue}, formulation {content.FormulationNumber}"
            )
        );
        return new Command("ufi", "Make or check a unique formula identifier (UFI).") { make, check };
    }

    private static int Say<T>(ParseResult parse, Parsed<T> answer, Func<T, string> words)
        where T : notnull
    {
        if (!answer.Success)
        {
            parse.InvocationConfiguration.Error.WriteLine(answer.Reason);
            return ExitCode.BadInput;
        }

        parse.InvocationConfiguration.Output.WriteLine(words(answer.Value));
        return ExitCode.Fine;
    }
}
