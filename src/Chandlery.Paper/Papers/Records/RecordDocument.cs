using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Paper.Blocks;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Records;

/// <summary>Prints documents that the maker keeps.</summary>
public static class RecordDocument
{
    private static readonly Dictionary<string, Scene> NoDrawings = [];

    /// <summary>The document, each page with its number; null when template or data have problems.</summary>
    /// <param name="kept">What it says.</param>
    /// <param name="shop">Templates and drawings.</param>
    /// <param name="problems">Collects what is wrong.</param>
    /// <param name="drawings">The drawings that it names; null for none.</param>
    public static PaperDocument? Make(
        KeptRecord kept,
        PaperShop shop,
        Problems problems,
        IReadOnlyDictionary<string, Scene>? drawings = null
    ) =>
        shop.Read(
            new RecordView(kept.Title, kept.Name, kept.Language, kept.Lines, [.. kept.Sections.Select(RecordSectionView.Of)]),
            problems
        )
            is { } document
            ? ManyPages.Lay(
                Depiction.In(document, drawings ?? NoDrawings),
                shop,
                (_, _) => [],
                (page, count) =>
                    [
                        ManyPages.Line(
                            "",
                            $"{kept.Title}: {kept.Name}, {(kept.Language == "en" ? $"page {page} of {count}" : $"{page}/{count}")}"
                        ),
                    ]
            )
            : null;
}
