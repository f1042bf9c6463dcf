/**
 * The settings: {@link sagwright.screen.settings.SettingsScreen} draws a {@link
 * sagwright.screen.settings.SettingsView} and calls {@link
 * sagwright.screen.settings.SettingsActions}. What is changed holds at once.
 */
package sagwright.screen.settings;
