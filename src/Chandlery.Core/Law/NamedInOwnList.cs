namespace Chandlery.Core.Law;

/// <summary>A substance that a place's own list of classes is known to name, though its class there was not read.</summary>
/// <param name="CasNumbers">Its CAS numbers.</param>
/// <param name="Says">What is known of it there, as a part of a sentence.</param>
/// <param name="Confidence">How that was checked.</param>
public sealed record NamedInOwnList(IReadOnlyList<string> CasNumbers, string Says, string Confidence);
