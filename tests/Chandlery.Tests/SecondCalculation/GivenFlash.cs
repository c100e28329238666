namespace Chandlery.Tests.SecondCalculation;

/// <summary>A flash point of the finished liquid as a report gives it.</summary>
/// <param name="Celsius">Degrees Celsius.</param>
/// <param name="Above">True when the report only says that it lies above this figure.</param>
/// <param name="Method">The method, such as <c>EN ISO 3679</c>.</param>
internal sealed record GivenFlash(double Celsius, bool Above, string Method);
