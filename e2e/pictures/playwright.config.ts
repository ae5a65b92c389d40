import { defineConfig } from '@playwright/test'
import stories from '../../playwright.config.ts'

/** The screenshots of the README, taken by `npm run pictures`. */
export default defineConfig(stories, { testDir: '.', testMatch: 'pictures.ts', outputDir: '../../node_modules/.cache/pictures' })
