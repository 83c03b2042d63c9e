namespace LabVolatility.Core.Limits;

/// <summary>A day of any year.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Day">1 to the month's last day; 29 February stands for the last day of February in every year.</param>
public sealed record MonthDay(int Month, int Day)
{
    /// <summary>A day that a person or program sent; false where no year has it.</summary>
    public static bool TryFrom(int month, int day, out MonthDay? monthDay)
    {
        // 2000 is a leap year, so that 29 February passes.
        var valid = month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(2000, month);
        monthDay = valid ? new MonthDay(month, day) : null;
        return valid;
    }

    /// <summary>The date in a year; 29 February gives 28 February where the year has no leap day.</summary>
    public DateOnly In(int year) => new(year, Month, Math.Min(Day, DateTime.DaysInMonth(year, Month)));

    /// <summary>"1 May".</summary>
    public override string ToString() =>
        $"{Day} {System.Globalization.CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(Month)}";
}
