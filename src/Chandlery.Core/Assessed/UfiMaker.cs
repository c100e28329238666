using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Notified;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed;

/// <summary>Decides whether a candle needs a UFI and makes it from the maker's VAT number and the formulation number.</summary>
internal static class UfiMaker
{
    /// <summary>The UFI; null when none is needed, refused when one is needed and cannot be made.</summary>
    public static Parsed<string>? Make(Maker maker, Candle candle, ProductKind kind, Verdict verdict)
    {
        Edition edition = verdict.Law.Edition;
        ClassResult? calling = verdict.Classification.Classes.FirstOrDefault(c =>
            edition.PoisonCentres?.Areas.Contains(c.Category.Area) == true
        );
        if (!edition.Ufi.Needed || calling is null)
        {
            return null;
        }

        string because =
            kind.Say("The candle is") + $" {calling.Category.Code}, so its label needs a UFI and the poison centres its composition.";
        if (maker.Vat is not { } vat || candle.FormulationNumber is not { } number)
        {
            return Parsed.Not<string>(
                $"{because} Add 'vat' to the maker and 'formulationNumber' to the candle (never one that another composition had)."
            );
        }

        Parsed<string> ufi = Ufi.Make(vat.Country, vat.Number, number);
        return ufi.Success ? ufi : Parsed.Not<string>($"{because} It cannot be made: {ufi.Reason}");
    }
}
