namespace Chandlery.Core.Law;

/// <summary>Where a statement's text comes from.</summary>
/// <param name="Source">The act, its state and its language.</param>
/// <param name="Checked">How the text was taken or checked, to go on after "was".</param>
/// <param name="IsVerified">True when it was taken from the act's text or compared with an independent copy of it.</param>
public sealed record TextOrigin(string Source, string Checked, bool IsVerified);
