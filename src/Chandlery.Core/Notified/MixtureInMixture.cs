using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Notified;

/// <summary>A bought mixture in the candle whose composition the maker does not know in full.</summary>
/// <param name="Name">Its trade name.</param>
/// <param name="Supplier">Who sells it.</param>
/// <param name="Share">Percent of the finished candle.</param>
/// <param name="Document">Its safety data sheet; empty where none is declared.</param>
/// <param name="Source">UFI and supplier's addresses, as far as declared.</param>
public sealed record MixtureInMixture(string Name, string Supplier, MassPercent Share, string Document, MixtureSource Source)
{
    /// <summary>Why its UFI cannot be right; null when it can, or when none is declared.</summary>
    public string? WrongUfi => Source.Ufi is { } ufi && Notified.Ufi.Parse(ufi) is { Success: false } wrong ? wrong.Reason : null;

    /// <summary>What the notification lacks of it, in words; empty when it has what it needs.</summary>
    public string Lacking =>
        Source.Ufi is not null || Source is { Telephone: not null, Email: not null }
            ? ""
            : $"{Name}: no UFI is declared ('ufi'); without one the supplier's telephone and electronic address are told, and {Undeclared()} not declared.";

    private string Undeclared() =>
        (Source.Telephone, Source.Email) switch
        {
            (null, null) => "both ('supplierTelephone', 'supplierEmail') are",
            (null, _) => "the telephone ('supplierTelephone') is",
            _ => "the electronic address ('supplierEmail') is",
        };
}
