namespace Chandlery.Core.Law;

/// <summary>What each phrase leaves open, in braces; its text must have all of these marks and no other.</summary>
public static class SheetPhraseMarks
{
    /// <summary>The marks of a phrase.</summary>
    public static IReadOnlyList<string> Of(SheetPhrase phrase) =>
        phrase switch
        {
            SheetPhrase.ShareUpTo => ["high"],
            SheetPhrase.ShareRange => ["low", "high"],
            SheetPhrase.SubstanceUpTo => ["name", "share"],
            SheetPhrase.OwnLimit => ["class", "percent"],
            SheetPhrase.AcuteM or SheetPhrase.ChronicM => ["factor"],
            SheetPhrase.AteOral or SheetPhrase.AteDermal or SheetPhrase.AteVapour or SheetPhrase.AteDust or SheetPhrase.AteGas =>
            [
                "estimate",
            ],
            SheetPhrase.CalculationMethod => ["formula", "clause"],
            SheetPhrase.NotAssessedHere => ["what"],
            SheetPhrase.Document => ["oil", "supplier", "document", "revised"],
            SheetPhrase.MissingStatement => ["code", "language"],
            SheetPhrase.FreeTextIsEnglish => ["language", "clause"],
            SheetPhrase.SomeTextIsEnglish => ["language", "subsections", "clause"],
            _ => [],
        };
}
