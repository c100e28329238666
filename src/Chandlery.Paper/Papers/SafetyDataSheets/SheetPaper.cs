using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>A paper that is made of the safety data sheet's model, one for each language of the label.</summary>
/// <param name="id">Short name of the paper.</param>
/// <param name="title">What people call it.</param>
public abstract class SheetPaper(string id, string title) : PaperKind(id, title)
{
    /// <inheritdoc/>
    public override bool NeedsSale => true;

    /// <inheritdoc/>
    public override bool IsPerLanguage => true;

    /// <inheritdoc/>
    public override bool HasPicturesInDossier => false;

    /// <summary>Prints the model; null when template or data have problems.</summary>
    protected abstract PaperDocument? Print(SafetySheet sheet, PaperShop shop, Problems problems);

    /// <inheritdoc/>
    protected override PaperOutcome Make(PaperRequest request, Problems problems)
    {
        SafetySheet? sheet = SafetySheetMaker.Make(
            request.Assessment,
            request.Language,
            request.Lawbook,
            request.Settings.Revision,
            problems
        );
        return sheet is null
            ? MissingPaper.Because(problems, IsDueOf(request))
            : Outcome(Print(sheet, request.Shop, problems), problems, sheet.Warnings);
    }

    // A sheet that nobody need have before somebody asks may wait for what its maker has not declared yet.
    private static bool IsDueOf(PaperRequest request) =>
        SheetDuties.Find(request.Assessment.Edition.SafetySheet, request.Assessment.Classification, request.Assessment.Substances).Duty
        == SheetDuty.WithDelivery;
}
