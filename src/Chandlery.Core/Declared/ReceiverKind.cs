namespace Chandlery.Core.Declared;

/// <summary>To whom candles went.</summary>
public enum ReceiverKind
{
    /// <summary>A business that sells them on.</summary>
    Shop,

    /// <summary>A person who burns them.</summary>
    Person,
}
