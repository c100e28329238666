using Chandlery.Workbench.Sheets;

namespace Chandlery.Workbench.Answers;

/// <summary>A draft beside its supplier's PDFs.</summary>
/// <param name="Documents">The PDFs with their pages; without pages where the PDF is not kept here.</param>
/// <param name="Places">Where the values stand.</param>
/// <param name="Doubts">What must be looked at.</param>
/// <param name="Contradictions">Where the sheet contradicts itself, or the table of harmonised classes.</param>
internal sealed record SheetAnswer(
    IReadOnlyList<SheetDocument> Documents,
    IReadOnlyList<ReadMark> Places,
    IReadOnlyList<Doubt> Doubts,
    IReadOnlyList<string> Contradictions
);
