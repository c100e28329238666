using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>How a substance is told from others: by CAS number first, then EC number, then name.</summary>
/// <param name="Name">Name as the sheet prints it.</param>
/// <param name="Cas">CAS number, when given.</param>
/// <param name="Ec">EC number, when given.</param>
public sealed record SubstanceIdentity(string Name, CasNumber? Cas, EcNumber? Ec)
{
    /// <summary>The name's letters and figures in lower case, by which names are compared.</summary>
    public string PlainName { get; } = PlainText.Of(Name);
}
