using Chandlery.Paper.Templates;
using Chandlery.Yaml;

namespace Chandlery.Paper.Designs;

/// <summary>The designs there are: folders of templates, the program's own and the user's.</summary>
/// <param name="templates">The templates.</param>
public sealed class DesignShelf(TemplateShelf templates)
{
    private const double PastTheBleedMm = 4;
    private const string Folder = "designs/";
    private const string Front = "front.sbn";

    /// <summary>Names of the designs.</summary>
    public IReadOnlyList<string> Names { get; } =
    [
        .. templates
            .Names.Where(n => n.StartsWith(Folder, StringComparison.Ordinal) && n.EndsWith("/" + Front, StringComparison.Ordinal))
            .Select(n => n[Folder.Length..^(Front.Length + 1)])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>What to write instead of a name that no design has.</summary>
    public string Remedy(string asked) =>
        Suggestion.Nearest(asked, Names) is { } near ? $"Did you mean '{near}'?" : $"Designs: {string.Join(", ", Names)}.";

    /// <summary>What a design is, in a sentence: the first remark of its front.</summary>
    public string About(string design) => templates.FirstRemark($"{Folder}{design}/{Front}");

    /// <summary>The art of a piece; null when there are problems.</summary>
    /// <param name="design">Name of the design.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="facts">The candle.</param>
    /// <param name="kit">Inks, face and logo.</param>
    /// <param name="sizeMm">Width and height, millimetres.</param>
    /// <param name="problems">Collects what is wrong with the templates.</param>
    /// <param name="beyondMm">How far ornaments go on past the edges of their room, millimetres; at least past the bleed.</param>
    public DesignArt? Draw(
        string design,
        DesignPiece piece,
        DesignFacts facts,
        BrandKit kit,
        (double Width, double Height) sizeMm,
        Problems problems,
        double beyondMm = PastTheBleedMm
    )
    {
        var view = DesignView.Of(facts, $"{Folder}{design}/{FileOf(design, piece)}", piece, sizeMm, kit);
        return templates.Write(view, problems) is { } xml
            ? DesignReader.Read(xml, "templates/" + view.Template, facts, kit, sizeMm, beyondMm, problems)
            : null;
    }

    // A piece without a template of its own is drawn as the one that it is most like.
    private string FileOf(string design, DesignPiece piece)
    {
        string[] tries = piece switch
        {
            DesignPiece.Lid => ["lid.sbn"],
            DesignPiece.Base => ["base.sbn", "lid.sbn"],
            DesignPiece.Tag => ["tag.sbn"],
            DesignPiece.Strip => ["strip.sbn"],
            DesignPiece.Sampler => ["sampler.sbn", "lid.sbn"],
            _ => [],
        };
        return tries.FirstOrDefault(f => templates.Names.Contains($"{Folder}{design}/{f}")) ?? Front;
    }
}
