using MudBlazor;

namespace LabVolatility.Web.Layout;

/// <summary>The colours and letters of wwwroot/lab.css, for the components that take theirs from a theme.</summary>
public static class LabTheme
{
    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = new PaletteLight
        {
            Background = "#f3f0e9", Surface = "#fbfaf6", BackgroundGray = "#e9e5db", DrawerBackground = "#fbfaf6", AppbarBackground = "#fbfaf6",
            AppbarText = "#221f1a", TextPrimary = "#221f1a", TextSecondary = "#5b554a", TextDisabled = "#5b554a", ActionDefault = "#221f1a",
            ActionDisabled = "#5b554a", LinesDefault = "#d6d0c3", LinesInputs = "#857d6e", TableLines = "#d6d0c3", Divider = "#d6d0c3",
            Primary = "#28508a", PrimaryContrastText = "#ffffff", Secondary = "#5b554a", Tertiary = "#5b554a", Dark = "#221f1a",
            Info = "#28508a", Success = "#1d6638", Warning = "#7a4f00", Error = "#a3231b",
        },
        PaletteDark = new PaletteDark
        {
            Background = "#191815", Surface = "#211f1c", BackgroundGray = "#2b2925", DrawerBackground = "#211f1c", AppbarBackground = "#211f1c",
            AppbarText = "#ece7dc", TextPrimary = "#ece7dc", TextSecondary = "#b0a999", TextDisabled = "#b0a999", ActionDefault = "#ece7dc",
            ActionDisabled = "#b0a999", LinesDefault = "#3d3a34", LinesInputs = "#8d8677", TableLines = "#3d3a34", Divider = "#3d3a34",
            Primary = "#94b7ec", PrimaryContrastText = "#14202f", Secondary = "#b0a999", Tertiary = "#b0a999", Dark = "#ece7dc",
            Info = "#94b7ec", InfoContrastText = "#14202f", Success = "#83cb9c", SuccessContrastText = "#14202f",
            Warning = "#e4ba63", WarningContrastText = "#14202f", Error = "#f29c92", ErrorContrastText = "#14202f",
        },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = ["Inter", "system-ui", "sans-serif"], FontSize = "14px", LineHeight = "1.45" },
            Button = new ButtonTypography { TextTransform = "none", FontWeight = "550", LetterSpacing = "0" },
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "3px" },
    };
}
