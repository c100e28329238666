namespace Chandlery.Paper.Pdf;

/// <summary>The structure of a document, written page by page (ISO 32000-1, 14.7).</summary>
internal sealed class StructureTree
{
    // What an element comes to; there are dozens on a label.
    private const int UsualBytes = 64;

    private readonly PdfFile file;
    private readonly int root;
    private readonly int document;
    private readonly ByteText outermost = new();
    private readonly ByteText parents = new();
    private int pages;

    /// <summary>Starts the tree.</summary>
    public StructureTree(PdfFile file)
    {
        this.file = file;
        root = file.Reserve();
        document = file.Reserve();
    }

    /// <summary>Adds the structure of a page.</summary>
    /// <param name="page">The page's number.</param>
    /// <param name="content">The page.</param>
    /// <returns>Entries of the page dictionary that lead to it.</returns>
    public string Add(int page, PageContent content)
    {
        var numbers = new Dictionary<StructureElement, int>(ReferenceEqualityComparer.Instance);
        foreach (StructureElement element in content.Elements)
        {
            outermost.Put(Write(element, document, page, numbers)).Put(" 0 R ");
        }

        ByteText byMark = new ByteText().Put("[");
        foreach (StructureElement element in content.ByMark)
        {
            byMark.Put(numbers[element]).Put(" 0 R ");
        }

        parents.Put(pages).Put(" ").Put(file.Add(byMark.Put("]"))).Put(" 0 R ");
        pages++;
        return $"/StructParents {pages - 1}/Tabs/S";
    }

    /// <summary>Ends the tree.</summary>
    /// <returns>Entries of the catalog that lead to it.</returns>
    public string Finish()
    {
        file.Add(document, new ByteText().Put($"<</S/Document/P {root} 0 R/K[").Put(outermost.Written).Put("]>>"));
        int byPage = file.Add(new ByteText().Put("<</Nums[").Put(parents.Written).Put("]>>"));
        file.Add(root, new ByteText().Put($"<</Type/StructTreeRoot/K {document} 0 R/ParentTree {byPage} 0 R/ParentTreeNextKey {pages}>>"));
        return $"/StructTreeRoot {root} 0 R/MarkInfo<</Marked true>>/ViewerPreferences<</DisplayDocTitle true>>";
    }

    private int Write(StructureElement element, int parent, int page, Dictionary<StructureElement, int> numbers)
    {
        int number = file.Reserve();
        numbers[element] = number;
        var kids = new ByteText(UsualBytes);
        foreach ((StructureElement? part, int mark) in element.Kids)
        {
            if (part is null)
            {
                kids.Put(mark).Put(" ");
            }
            else
            {
                kids.Put(Write(part, number, page, numbers)).Put(" 0 R ");
            }
        }

        ByteText body = new ByteText(UsualBytes).Put("<</S/").Put(element.Type).Put("/P ").Put(parent).Put(" 0 R/Pg ").Put(page);
        body.Put(" 0 R/K[").Put(kids.Written).Put("]");
        if (element.Language is { } language)
        {
            body.Put("/Lang").Put(PdfText.Of(language));
        }

        if (element.Alternative is { } words)
        {
            body.Put("/Alt").Put(PdfText.Of(words));
        }

        if (element.Attributes.Length > 0)
        {
            body.Put("/A").Put(element.Attributes);
        }

        file.Add(number, body.Put(">>"));
        return number;
    }
}
