namespace Chandlery.Workbench.Answers;

/// <summary>A kind of product.</summary>
/// <param name="Id">Its name in a declaration.</param>
/// <param name="Name">What people call it, in English.</param>
internal sealed record KindOffer(string Id, string Name);
