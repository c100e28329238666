using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Reads a statement of fragrance allergens.</summary>
internal sealed class AllergenReader(SheetWording wording, HazardText hazards, LabelFinder labels, int document)
{
    /// <summary>What the statement says; substances that it says are absent are left out.</summary>
    /// <param name="lines">Its lines without heads and feet.</param>
    /// <param name="all">All its lines.</param>
    /// <param name="pages">Its pages.</param>
    public OilDraft Read(IReadOnlyList<TextLine> lines, IReadOnlyList<TextLine> all, IReadOnlyList<SheetPage> pages)
    {
        var rows = new IngredientRows(wording, hazards, document, givesClasses: false);
        List<DraftIngredient> listed =
        [
            .. Panels
                .Of(lines, wording)
                .Select(p => new TableFinder(wording, hazards).Find(p, pages))
                .OfType<Table>()
                .SelectMany(t => rows.Of(t, IsAbsent)),
        ];
        SheetHead head = new HeadReader(wording, labels, document).Read(all, all);
        List<DraftIngredient> present = [.. listed.Where(i => !i.Doubts.Contains(IngredientRows.Absent))];
        IEnumerable<string> doubts =
            listed.Count == 0 ? ["the allergen statement has no table that could be read"] : CasNet.Missing(listed, lines, pages);
        return OilDraft.Headed(head) with { Ingredients = present, Doubts = [.. doubts] };
    }

    private bool IsAbsent(string share) =>
        Phrase.IsOneOf(wording.Lists["notPresent"], share) || (share.Any(char.IsAsciiDigit) && !share.Any(c => c is >= '1' and <= '9'));
}
