using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Notified;

namespace Chandlery.Core.Assessed;

/// <summary>Decides whether a candle needs a UFI and makes it from the maker's VAT number and the formulation number.</summary>
internal static class UfiMaker
{
    /// <summary>The UFI, or null; when one is needed and cannot be made, the finding that stops the sale.</summary>
    public static string? Make(Maker maker, Candle candle, Verdict verdict, out Finding? finding)
    {
        finding = null;
        Edition edition = verdict.Law.Edition;
        List<ClassResult> calling =
        [
            .. verdict.Classification.Classes.Where(c => edition.PoisonCentres?.Areas.Contains(c.Category.Area) == true),
        ];
        if (!edition.Ufi.Needed || calling.Count == 0)
        {
            return null;
        }

        string because = $"The candle is {calling[0].Category.Code}, so its label needs a UFI and the poison centres its composition.";
        if (maker.VatCountry is null || maker.VatNumber is null || candle.FormulationNumber is not { } number)
        {
            finding = new Finding(
                Gravity.Stop,
                $"{because} Add 'vat' to the maker and 'formulationNumber' to the candle (never one that another composition had).",
                edition.Ufi.Clause
            );
            return null;
        }

        string? ufi = Ufi.Make(maker.VatCountry, maker.VatNumber, number, out string why);
        if (ufi is null)
        {
            finding = new Finding(Gravity.Stop, $"{because} It cannot be made: {why}", edition.Ufi.Clause);
        }

        return ufi;
    }
}
