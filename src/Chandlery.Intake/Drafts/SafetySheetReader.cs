using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Reads a safety data sheet.</summary>
internal sealed class SafetySheetReader(SheetWording wording, HazardText hazards, LabelFinder labels, int document)
{
    /// <summary>What the sheet says.</summary>
    /// <param name="sections">Its sections.</param>
    /// <param name="all">All its lines, with heads and feet.</param>
    /// <param name="pages">Its pages.</param>
    public OilDraft Read(Sections sections, IReadOnlyList<TextLine> all, IReadOnlyList<SheetPage> pages)
    {
        var doubts = new List<string>();
        IReadOnlyList<TextLine> composition = sections[3];
        IReadOnlyList<DraftIngredient> ingredients = Ingredients(composition, pages);
        if (ingredients.Count == 0)
        {
            doubts.Add("section 3 has no table or list of ingredients that could be read; type it in");
        }

        doubts.AddRange(CasNet.Missing(ingredients, composition, pages));
        (ingredients, IReadOnlyList<string> ofNobody) = new LateSections(wording, hazards).Join(ingredients, sections);
        doubts.AddRange(ofNobody);
        SheetHead head = new HeadReader(wording, labels, document).Read(sections[1].Count > 0 ? sections[1] : sections.Front, all);
        var physical = new PhysicalReader(wording, labels, document);
        return OilDraft.Headed(head) with
        {
            Classes = new OwnClassesReader(wording, hazards, document).Read(sections.Sub(2, 1), sections.Sub(2, 2)),
            Ingredients = ingredients,
            FlashPoint = physical.FlashPoint(sections[9]),
            DensityGramsPerMl = physical.Density(sections[9]),
            Doubts = doubts,
        };
    }

    // As a table, as labelled blocks side by side or under each other, as sentences: whichever finds the most numbers.
    private List<DraftIngredient> Ingredients(IReadOnlyList<TextLine> composition, IReadOnlyList<SheetPage> pages)
    {
        var rows = new IngredientRows(wording, hazards, document);
        int wanted = composition.SelectMany(l => ColumnKind.CasPattern().Matches(l.Text).Select(m => m.Value)).Distinct().Count();
        Table? table =
            new TurnedTableFinder(wording, hazards).Find(composition, pages) ?? new TableFinder(wording, hazards).Find(composition, pages);
        if (table is null && SideBySide.Parted(composition, wording) is { } parted)
        {
            List<DraftIngredient> cards = [.. LabelledIngredients.Of(parted, wording, rows)];
            if (Numbers(cards) >= wanted)
            {
                return cards;
            }
        }

        table ??= new ShapeFinder(wording, hazards).Find(composition, pages);
        List<DraftIngredient> best = table is null ? [] : [.. rows.Of(table)];
        if (best.Count > 0 && Numbers(best) >= wanted)
        {
            return best;
        }

        foreach (
            List<DraftIngredient> other in new List<DraftIngredient>[]
            {
                [.. LabelledIngredients.Of(composition, wording, rows)],
                [.. new ProseIngredients(wording, hazards, rows).Of(composition)],
            }
        )
        {
            best = Numbers(other) > Numbers(best) || best.Count == 0 ? other : best;
        }

        return best;
    }

    private static int Numbers(List<DraftIngredient> ingredients) =>
        ingredients.Where(i => i.Cas is { Doubts.Count: 0 }).Select(i => i.Cas!.Value).Distinct().Count();
}
