using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Quantities;

/// <summary>A mark or register for programs.</summary>
/// <param name="Country">Country code.</param>
/// <param name="From">Since when; null when always or not known.</param>
/// <param name="Says">What is due.</param>
/// <param name="Clause">Where it stands; empty where no rule is known.</param>
public sealed record PackagingMarkReport(string Country, string? From, string Says, string Clause)
{
    /// <summary>The report of a mark.</summary>
    public static PackagingMarkReport Of(PackagingMark mark) =>
        new(
            mark.Country,
            mark.Row?.InForce.From is { } from ? IsoDay.Plain(from) : null,
            mark.Row?.Says ?? "No rule is known here: look it up.",
            mark.Row?.Clause.Text ?? ""
        );
}
