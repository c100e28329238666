using System.CommandLine;
using Chandlery.Core.Notified;

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
            Description = $"Formulation number, 0 to {Ufi.LargestFormulationNumber}; never one that another composition had.",
            CustomParser = Numbers.Long("The formulation number", long.MinValue, long.MaxValue),
        };
        var make = new Command("make", "Make a UFI from a VAT number and a formulation number.") { country, vat, formulation };
        make.SetAction(parse =>
        {
            string? made = Ufi.Make(parse.GetValue(country)!, parse.GetValue(vat)!, parse.GetValue(formulation), out string why);
            return Say(parse, made, why);
        });
        var code = new Argument<string>("code") { Description = "The sixteen signs, with or without hyphens." };
        var check = new Command("check", "Check a UFI and say what it holds.") { code };
        check.SetAction(parse =>
        {
            UfiContent? content = Ufi.Read(parse.GetValue(code)!, out string why);
            string? said = content is null
                ? null
                : $"valid: country {content.Country}, VAT value {content.VatValue}, formulation {content.FormulationNumber}";
            return Say(parse, said, why);
        });
        return new Command("ufi", "Make or check a unique formula identifier (UFI).") { make, check };
    }

    private static int Say(ParseResult parse, string? answer, string why)
    {
        if (answer is null)
        {
            parse.InvocationConfiguration.Error.WriteLine(why);
            return ExitCode.BadInput;
        }

        parse.InvocationConfiguration.Output.WriteLine(answer);
        return ExitCode.Fine;
    }
}
