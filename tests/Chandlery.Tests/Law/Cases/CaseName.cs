using Xunit.Abstractions;

namespace Chandlery.Tests.Law.Cases;

/// <summary>Which case of which edition; the test's result goes by this name.</summary>
public sealed class CaseName : IXunitSerializable, IEquatable<CaseName>
{
    /// <summary>For xunit, which fills it in afterwards.</summary>
    [Obsolete("Only xunit makes an empty one.")]
    public CaseName() { }

    public CaseName(string edition, string title)
    {
        Edition = edition;
        Title = title;
    }

    /// <summary>The edition's folder under <c>data/law</c>.</summary>
    public string Edition { get; private set; } = "";

    /// <summary>What the file calls the case.</summary>
    public string Title { get; private set; } = "";

    /// <inheritdoc/>
    public void Deserialize(IXunitSerializationInfo info)
    {
        Edition = info.GetValue<string>(nameof(Edition));
        Title = info.GetValue<string>(nameof(Title));
    }

    /// <inheritdoc/>
    public void Serialize(IXunitSerializationInfo info)
    {
        info.AddValue(nameof(Edition), Edition);
        info.AddValue(nameof(Title), Title);
    }

    /// <inheritdoc/>
    public bool Equals(CaseName? other) => other?.ToString() == ToString();

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CaseName);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string ToString() => $"{Edition}: {Title}";
}
