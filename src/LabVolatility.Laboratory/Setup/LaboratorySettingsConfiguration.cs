using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Setup;

internal sealed class LaboratorySettingsConfiguration : IEntityTypeConfiguration<LaboratorySettings>
{
    public void Configure(EntityTypeBuilder<LaboratorySettings> settings)
    {
        settings.ToTable("laboratory_settings");
        settings.Property(s => s.Id).ValueGeneratedNever();
        settings.Property(s => s.Name).HasMaxLength(Lengths.Name);
        settings.Property(s => s.Place).HasMaxLength(Lengths.Name);
        settings.Property(s => s.TimeZone).HasMaxLength(Lengths.Name);
        settings.Property(s => s.ShiftStarts).HasJson();
        settings.Property(s => s.PublicAddress).HasMaxLength(Lengths.Name);
    }
}
