using Chandlery.Paper.Symbols;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Documents;

/// <summary>What documents are made with.</summary>
/// <param name="Templates">Templates.</param>
/// <param name="Symbols">Drawings.</param>
public sealed record PaperShop(TemplateShelf Templates, SymbolSheet Symbols);
