using Chandlery.Core.Hazards;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Reads a supplier's PDF: safety data sheet, IFRA certificate or allergen statement.</summary>
internal sealed class SheetReader(SheetWording wording, HazardVocabulary vocabulary)
{
    private const int FewestSections = 3;
    private const int LinesOfHead = 60;
    private readonly HazardText hazards = new(vocabulary, wording);
    private readonly LabelFinder labels = new(wording);

    /// <summary>What the PDF says, or null when it is none of the three kinds.</summary>
    /// <param name="pages">Its pages.</param>
    /// <param name="document">Its number among the PDFs of the draft.</param>
    /// <param name="kind">What it is.</param>
    public OilDraft? Read(IReadOnlyList<SheetPage> pages, int document, out SheetKind kind)
    {
        bool IsSection(TextLine line) => Sections.IsHeading(line.Text, wording);
        IReadOnlyList<SheetPage> plain = ReadingOrder.WithoutFrames(
            pages,
            l => ColumnKind.IsTableHeading(l, wording) || ColumnKind.IsOfRow(l.Text) || hazards.Says(l.Text)
        );
        IReadOnlyList<TextLine> lines = ReadingOrder.Of(plain, IsSection);
        var sections = Sections.Of(lines, wording);
        IReadOnlyList<TextLine> all = ReadingOrder.Of(pages, IsSection);
        string first = string.Join(' ', all.Take(LinesOfHead).Select(l => l.Text));
        if (sections.Count >= FewestSections && sections[3].Count > 0)
        {
            kind = SheetKind.SafetyDataSheet;
            return new SafetySheetReader(wording, hazards, labels, document).Read(sections, all, pages);
        }

        if (Phrase.AnyIn(wording.Lists["allergenStatement"], first) && !Phrase.AnyIn(wording.Lists["ifraCertificate"], first))
        {
            kind = SheetKind.AllergenStatement;
            return new AllergenReader(wording, hazards, labels, document).Read(lines, all, pages);
        }

        kind = SheetKind.IfraCertificate;
        return Phrase.AnyIn(wording.Lists["ifraCertificate"], first) ? new IfraReader(wording, labels, document).Read(all) : null;
    }
}
