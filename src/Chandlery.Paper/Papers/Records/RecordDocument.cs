using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Records;

/// <summary>Prints documents that the maker keeps.</summary>
public static class RecordDocument
{
    /// <summary>The document, each page with its number; null when template or data have problems.</summary>
    public static PaperDocument? Make(KeptRecord kept, PaperShop shop, Problems problems) =>
        shop.Read(
            new RecordView(kept.Title, kept.Name, kept.Language, kept.Lines, [.. kept.Sections.Select(RecordSectionView.Of)]),
            problems
        )
            is { } document
            ? ManyPages.Lay(
                document,
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
