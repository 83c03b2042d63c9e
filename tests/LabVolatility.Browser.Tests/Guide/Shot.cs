using LabVolatility.Browser.Tests.Harness;
using Microsoft.Playwright;

namespace LabVolatility.Browser.Tests.Guide;

/// <summary>How a picture is taken.</summary>
internal sealed record Shot(Screen Screen, ColorScheme Scheme)
{
    public static Shot Desk { get; } = new(Screen.Desk, ColorScheme.Light);

    public static Shot DeskDark { get; } = new(Screen.Desk, ColorScheme.Dark);

    public static Shot Tablet { get; } = new(Screen.Tablet, ColorScheme.Light);

    public static Shot TabletDark { get; } = new(Screen.Tablet, ColorScheme.Dark);

    public static Shot Phone { get; } = new(Screen.Phone, ColorScheme.Light);

    public static Shot PhoneDark { get; } = new(Screen.Phone, ColorScheme.Dark);

    public override string ToString() => $"{Screen}-{(Scheme == ColorScheme.Dark ? "dark" : "light")}";
}
