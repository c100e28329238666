using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>A part of a wax blend.</summary>
/// <param name="Wax">Which wax.</param>
/// <param name="Share">Its share of the blend.</param>
public sealed record WaxPart(Reference Wax, MassPercent Share);
