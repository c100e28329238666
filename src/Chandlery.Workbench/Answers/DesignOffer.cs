namespace Chandlery.Workbench.Answers;

/// <summary>A design of fronts that can be chosen.</summary>
/// <param name="Name">Its name.</param>
/// <param name="About">What it looks like, a sentence.</param>
internal sealed record DesignOffer(string Name, string About);
