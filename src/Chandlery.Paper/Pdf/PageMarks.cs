using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Pdf;

/// <summary>
/// Marks what is drawn on a page as a part of the document's structure, or as an artifact, which nobody needs to hear (ISO 32000-1,
/// 14.6 and 14.8.2.2).
/// </summary>
/// <param name="content">The page's content stream.</param>
/// <param name="pageHeightMm">Height of the page: structure counts from its foot.</param>
internal sealed class PageMarks(ByteText content, double pageHeightMm)
{
    private const double PointsPerMm = PdfUnits.PointsPerMm;

    private readonly StructureElement page = new("Page");
    private readonly List<StructureElement> byMark = [];
    private readonly Stack<(StructureElement Element, bool Speaks)> open = new();
    private StructureElement? marked;
    private bool inArtifact;

    /// <summary>The page's outermost elements.</summary>
    public IReadOnlyList<StructureElement> Elements => page.Parts;

    /// <summary>For each marked content the element that it belongs to.</summary>
    public IReadOnlyList<StructureElement> ByMark => byMark;

    private StructureElement Innermost => open.TryPeek(out var top) ? top.Element : page;

    /// <summary>Goes into things that mean something together.</summary>
    public void Enter(TaggedItem tagged)
    {
        Close();
        bool isDrawing = tagged.Role == TagRole.Figure || tagged.Alternative is not null;
        var element = new StructureElement(TypeOf(tagged.Role))
        {
            Language = tagged.Language,
            Alternative = tagged.Alternative,
            Attributes = tagged.Role switch
            {
                TagRole.Figure or TagRole.Table when ItemBounds.Of(tagged.Items) is { } bounds => Place(bounds),
                TagRole.TableHeader => "<</O/Table/Scope/Column>>",
                _ => "",
            },
        };
        Innermost.Add(element);
        open.Push((element, isDrawing || (open.TryPeek(out var above) && above.Speaks)));
    }

    /// <summary>Goes out of them again.</summary>
    public void Leave()
    {
        Close();
        StructureElement left = open.Pop().Element;
        if (left.Kids.Count == 0)
        {
            Innermost.TakeBackLast();
        }
    }

    /// <summary>Text follows.</summary>
    public void Text()
    {
        StructureElement parent = Innermost;
        string? own = parent.Type switch
        {
            "Page" => "P",
            "Table" => "Caption",
            "TR" => "TD",
            _ => null,
        };
        if (own is null)
        {
            Mark(parent);
            return;
        }

        Close();
        var element = new StructureElement(own);
        parent.Add(element);
        Mark(element);
    }

    /// <summary>A path or picture follows.</summary>
    public void Drawing()
    {
        if (open.TryPeek(out var top) && top.Speaks)
        {
            Mark(top.Element);
        }
        else if (!inArtifact)
        {
            Close();
            content.Put("/Artifact BMC\n");
            inArtifact = true;
        }
    }

    /// <summary>Ends the marked contents that are open: whatever follows is another's.</summary>
    public void Close()
    {
        if (inArtifact || marked is not null)
        {
            content.Put("EMC\n");
            inArtifact = false;
            marked = null;
        }
    }

    private void Mark(StructureElement element)
    {
        if (marked == element)
        {
            return;
        }

        Close();
        content.Put($"/{element.Type}<</MCID ").Put(byMark.Count).Put(">>BDC\n");
        element.Add(byMark.Count);
        byMark.Add(element);
        marked = element;
    }

    private static string TypeOf(TagRole role) =>
        role switch
        {
            TagRole.Heading => "H1",
            TagRole.Paragraph => "P",
            TagRole.Figure => "Figure",
            TagRole.Table => "Table",
            TagRole.TableRow => "TR",
            TagRole.TableHeader => "TH",
            TagRole.TableCell => "TD",
            _ => throw new ArgumentOutOfRangeException(nameof(role), role, "a role without a structure type"),
        };

    // Where it lies on the page (ISO 32000-1, table 344), points from the lower left.
    private string Place(ItemBounds bounds)
    {
        ByteText place = new ByteText()
            .Put("<</O/Layout/BBox[")
            .Spaced(bounds.LeftMm * PointsPerMm, 2)
            .Spaced((pageHeightMm - bounds.BottomMm) * PointsPerMm, 2)
            .Spaced(bounds.RightMm * PointsPerMm, 2)
            .Spaced((pageHeightMm - bounds.TopMm) * PointsPerMm, 2)
            .Put("]>>");
        return System.Text.Encoding.ASCII.GetString(place.Written);
    }
}
