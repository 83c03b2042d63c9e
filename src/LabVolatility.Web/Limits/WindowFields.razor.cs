using System.Globalization;
using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Limits;

/// <summary>The windows of a calendar as typed.</summary>
public sealed partial class WindowFields : ComponentBase
{
    // A calendar can't name another calendar, so only classes that hold all the year may be named.
    private static readonly IReadOnlyList<Area> Classes = [.. PublishedAreas.All.Where(a => a.Calendar.Count == 0)];

    [Parameter, EditorRequired]
    public IList<WindowEntry> Windows { get; set; } = [];

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>Raised at every change, so that the year is drawn anew.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    private static RenderFragment Months => builder =>
    {
        for (var month = 1; month <= 12; month++)
        {
            builder.OpenElement(0, "option");
            builder.AddAttribute(1, "value", month.ToString(CultureInfo.InvariantCulture));
            builder.AddContent(2, CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month));
            builder.CloseElement();
        }
    };

    private string? Wrong(string field) => Problems.FirstOrDefault(p => p.Field == field)?.Message;

    private Task Tell() => Changed.InvokeAsync();

    private Task AddAsync()
    {
        Windows.Add(new WindowEntry());
        return Changed.InvokeAsync();
    }

    private Task RemoveAsync(WindowEntry window)
    {
        Windows.Remove(window);
        return Changed.InvokeAsync();
    }
}
