using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>What the candle is poured into.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Name.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Brimful">Volume to the brim; the package's capacity in the sense of the label-size table.</param>
/// <param name="Fill">Volume to the intended fill line, when declared.</param>
/// <param name="Inner">Inner size, when declared.</param>
/// <param name="Outer">Outer size, when declared.</param>
public sealed record Vessel(
    string Id,
    TextPlace Place,
    string Name,
    string Material,
    Millilitres Brimful,
    Millilitres? Fill,
    VesselSize? Inner,
    VesselSize? Outer
) : IDeclaration
{
    /// <summary>Volume below a headspace kept free under the brim; null when the inner size is not declared.</summary>
    public Millilitres? Below(Millimetres headspace) =>
        Inner is { } inner
            ? new Millilitres(Math.Max(0, Brimful.Value - (inner.Section.AreaSquareMillimetres * headspace.Value / 1000)))
            : null;
}
