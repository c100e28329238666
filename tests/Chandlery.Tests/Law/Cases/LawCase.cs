using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Cases;

/// <summary>A case of a <c>cases.yaml</c>: a mixture, a day, and what the law makes of it.</summary>
/// <param name="Name">Which case of which edition.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Given">The ingredients, shares in percent of the candle.</param>
/// <param name="UndeclaredPercent">The share that nobody declares.</param>
/// <param name="On">The day that is asked about.</param>
/// <param name="OnMarketSince">Since when the candle has been sold; null for a new one.</param>
/// <param name="Then">What the law makes of it.</param>
/// <param name="Source">Document, clause and edition; for a case from memory, why there is no such source.</param>
/// <param name="IsFromMemory">True when nobody has compared the case with the text of the law.</param>
internal sealed record LawCase(
    CaseName Name,
    TextPlace Place,
    IReadOnlyList<Ingredient> Given,
    double UndeclaredPercent,
    DateOnly On,
    DateOnly? OnMarketSince,
    IReadOnlyList<Expectation> Then,
    string Source,
    bool IsFromMemory
);
