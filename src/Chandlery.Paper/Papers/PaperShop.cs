using Chandlery.Core.Law;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Symbols;
using Chandlery.Paper.Templates;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers;

/// <summary>What documents are made with.</summary>
/// <param name="Templates">Templates.</param>
/// <param name="Symbols">Drawings.</param>
public sealed record PaperShop(TemplateShelf Templates, SymbolSheet Symbols)
{
    /// <summary>The designs of fronts.</summary>
    public DesignShelf Designs { get; } = new(Templates);

    /// <summary>Where long words may be broken on what is read; on labels each language breaks its own.</summary>
    public WordBreaks Breaks { get; init; } = WordBreaks.None;

    /// <summary>The document that a template writes for a view; null when there are problems.</summary>
    internal MarkupDocument? Read(ITemplateView view, Problems problems)
    {
        string shown = "templates/" + view.Template;
        if (Templates.Write(view, problems) is not { } xml || MarkupReader.Read(xml, shown, problems, Breaks) is not { } document)
        {
            return null;
        }

        List<string> unknown = [.. document.Blocks.SelectMany(b => b.SymbolNames).Where(s => s.Length > 0 && !Symbols.Has(s)).Distinct()];
        foreach (string name in unknown)
        {
            problems.Add(new TextPlace(shown, 0, 0), $"There is no symbol '{name}'.", $"Known: {string.Join(", ", Symbols.Symbols.Keys)}.");
        }

        return unknown.Count == 0 ? document : null;
    }
}
