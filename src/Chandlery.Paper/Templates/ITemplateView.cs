namespace Chandlery.Paper.Templates;

/// <summary>All that one template may use.</summary>
public interface ITemplateView : IView
{
    /// <summary>File name of the template.</summary>
    string Template { get; }
}
