namespace Chandlery.Workbench.Keeping;

/// <summary>That the last change shall be taken back.</summary>
/// <param name="Again">True to do again what was taken back.</param>
internal sealed record StepRequest(bool Again);
