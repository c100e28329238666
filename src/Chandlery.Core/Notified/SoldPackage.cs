using Chandlery.Core.Quantities;

namespace Chandlery.Core.Notified;

/// <summary>A package in which a composition is sold.</summary>
/// <param name="Vessel">Its name.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Brimful">What it holds.</param>
/// <param name="Contents">What is in it; null where no fill line is declared.</param>
/// <param name="Net">The nominal quantity.</param>
/// <param name="Volume">The nominal quantity of a liquid; null for solids.</param>
public sealed record SoldPackage(
    string Vessel,
    string Material,
    Millilitres Brimful,
    Millilitres? Contents,
    Grams Net,
    Millilitres? Volume = null
);
