namespace Chandlery.Core.Law;

/// <summary>A substance that an entry covers.</summary>
/// <param name="Names">Its names as the table prints them, alternatives apart.</param>
/// <param name="Cas">Its CAS number; null where the table gives none.</param>
/// <param name="Ec">Its EC number; null where the table gives none.</param>
public sealed record EntryMember(IReadOnlyList<string> Names, string? Cas, string? Ec);
