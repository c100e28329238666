using Chandlery.Core.Declared;

namespace Chandlery.Register;

/// <summary>Whether an entry is one that somebody looks for, by what is signed alone.</summary>
internal static class SignedMatch
{
    /// <summary>
    /// Whether what an entry says meets every condition. A name of an oil's declaration may also be part of a trade name: both count,
    /// so that rather one entry too many is found.
    /// </summary>
    public static bool Of(RegisterContent content, RegisterQuery query) =>
        (query.Batch is not { } batch || content.Batch == batch || content.Subject == batch)
        && (query.Substance is not { } substance || content.Substances.Any(s => Is(s, substance)))
        && (query.Oil is not { } oil || content.Oils.Any(o => o.Oil == oil || Has(o.Name, oil)))
        && (query.Document is not { } document || content.Oils.Any(o => Has(o.Document, document)))
        && (query.Revised is not { } revised || content.Oils.Any(o => o.Revised == revised));

    private static bool Is(HeldSubstance held, string wanted) =>
        CasNumber.Parse(wanted).Success ? held.Cas == wanted : Has(held.Name, wanted);

    private static bool Has(string text, string part) => text.Contains(part, StringComparison.OrdinalIgnoreCase);
}
