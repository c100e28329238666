using Xunit.Abstractions;
using Xunit.Sdk;

namespace Chandlery.Tests.Support;

/// <summary>Marks a test whose expected values come from outside this project, and names the source.</summary>
[TraitDiscoverer("Chandlery.Tests.Support.OutsideDiscoverer", "Chandlery.Tests")]
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Class, AllowMultiple = true)]
public sealed class OutsideAttribute(string source) : Attribute, ITraitAttribute
{
    /// <summary>Document, clause, edition.</summary>
    public string Source { get; } = source;
}

/// <summary>Lets <c>dotnet test --filter Check=outside</c> find them.</summary>
public sealed class OutsideDiscoverer : ITraitDiscoverer
{
    /// <inheritdoc/>
    public IEnumerable<KeyValuePair<string, string>> GetTraits(IAttributeInfo traitAttribute) => [new("Check", "outside")];
}
