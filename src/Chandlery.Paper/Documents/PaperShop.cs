using Chandlery.Core.Declared;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Symbols;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Documents;

/// <summary>What documents are made with.</summary>
/// <param name="Templates">Templates.</param>
/// <param name="Symbols">Drawings.</param>
public sealed record PaperShop(TemplateShelf Templates, SymbolSheet Symbols)
{
    /// <summary>The document that a template writes for these values; null when there are problems.</summary>
    internal MarkupDocument? Read(string template, IReadOnlyDictionary<string, object?> values, Problems problems) =>
        Templates.Write(template, values, problems) is { } xml ? MarkupReader.Read(xml, "templates/" + template, problems) : null;
}
