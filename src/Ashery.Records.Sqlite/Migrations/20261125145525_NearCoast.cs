using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Ashery.Records.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class NearCoast : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<bool>(
                name: "NearCoast",
                table: "garden_state",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "NearCoast",
                table: "garden_state");
        }
    }
}
