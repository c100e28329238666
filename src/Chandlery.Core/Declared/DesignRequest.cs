using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>The front that a candle asks for.</summary>
/// <param name="Name">Name of the design; null for the brand's.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Form">How front and law come together.</param>
/// <param name="StrapLine">A line under the name; null for the brand's.</param>
/// <param name="BurnHours">Hours that it burns, as the maker tested it; null for none.</param>
/// <param name="ScentNotes">How it smells, in the maker's words; null for the names of its oils.</param>
public sealed record DesignRequest(
    string? Name,
    TextPlace Place,
    DesignForm Form,
    string? StrapLine,
    double? BurnHours,
    string? ScentNotes
);
